// arithmetic, measured, prescribed, practice: as explained in laminate.test.ts.

import { describe, expect, it } from 'vitest';
import { hoopExpansion } from '#calc';
import { laminas } from '#shared/reference/laminas.ts';
import { mandrelExpansions } from '#shared/reference/mandrel-expansions.ts';

const share = 0.45;
const epoxy = { e: 3e9, nu: 0.35, alpha: 60e-6 };
const cloths = { carbon: laminas.carbon, glass: laminas.glass, aramid: laminas.aramid };

describe('a typical ply laid up by hand', () => {
  // Fibers: Callister, and Hyer, Stress Analysis of Fiber-Reinforced Composite Materials (both from memory): along
  // 230, 72.4 and 124 GPa; -0.6, 5.0 and -2 x 1e-6/K. Rule of mixtures and Schapery 1968, along the fibers.
  it.each([
    ['carbon', 230e9, -0.6e-6],
    ['glass', 72.4e9, 5e-6],
    ['aramid', 124e9, -2e-6],
  ] as const)('arithmetic: of %s is what its fiber and epoxy make of it', (fiber, e, alpha) => {
    const e1 = share * e + (1 - share) * epoxy.e;
    const alpha1 = (share * e * alpha + (1 - share) * epoxy.e * epoxy.alpha) / e1;
    expect(laminas[fiber].e1 / e1).toBeCloseTo(1, 1);
    expect(Math.abs(laminas[fiber].alpha1 - alpha1)).toBeLessThan(0.2e-6);
    // Across, the matrix rules: Schapery, (1 + nu_m) a_m V_m and what the fiber adds, at most as much as epoxy alone.
    expect(laminas[fiber].alpha2).toBeGreaterThan(0.5 * epoxy.alpha);
    expect(laminas[fiber].alpha2).toBeLessThan((1 + epoxy.nu) * epoxy.alpha);
  });

  // * Woven glass/epoxy circuit board, in the plane: 12 to 18 x 1e-6/K (IPC-4101 sheets, from memory). Woven
  // carbon/epoxy 2 to 6, woven aramid/epoxy 3 to 8 (printed-board and tooling handbooks, from memory).
  it.each([
    ['carbon', 2e-6, 6e-6],
    ['glass', 12e-6, 18e-6],
    ['aramid', 3e-6, 8e-6],
  ] as const)('measured: woven %s grows as such laminates are found to grow', (fiber, least, most) => {
    const grows = hoopExpansion(cloths[fiber]);
    expect(grows).toBeGreaterThan(least);
    expect(grows).toBeLessThan(most);
  });
});

describe('mandrels', () => {
  // OpenStax and Serway (read): aluminum 24 to 25, steel 11 to 12 x 1e-6/K; the alloys of Callister lie near.
  it('measured: grow as textbooks say', () => {
    expect(mandrelExpansions.aluminum).toBeGreaterThan(23e-6);
    expect(mandrelExpansions.aluminum).toBeLessThan(25e-6);
    expect(mandrelExpansions.steel).toBeGreaterThan(11e-6);
    expect(mandrelExpansions.steel).toBeLessThan(12e-6);
  });

  // Common practice, no source: aluminum lets go of carbon, steel half as much, glass grips.
  it('practice: let go of carbon, steel about half as much as aluminum, and not of glass', () => {
    const apart = (mandrel: number, fiber: keyof typeof cloths) => mandrel - hoopExpansion(cloths[fiber]);
    const half = apart(mandrelExpansions.steel, 'carbon') / apart(mandrelExpansions.aluminum, 'carbon');
    expect(half).toBeGreaterThan(0.3);
    expect(half).toBeLessThan(0.6);
    expect(apart(mandrelExpansions.steel, 'glass')).toBeLessThan(0);
  });
});
