// Random tapers against an integrator of another hand. Source: ODEX of Hairer, Norsett and Wanner, Solving Ordinary
// Differential Equations I, as the package odex from the registry; the equations are Gere and Timoshenko's for a beam.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BeamLoad, beamColumn, beamLine } from '#calc';
import { odex } from './packages.ts';

const LENGTH = 3;
const STATIONS = 41;

/** A thin tube that tapers and whose wall tapers, both smoothly: EI by its exact geometry. */
type Taper = { foot: number; tip: number; wall: number; wallTip: number; bulge: number };
const taper: fc.Arbitrary<Taper> = fc.record({
  foot: fc.double({ min: 0.02, max: 0.08, noNaN: true }),
  tip: fc.double({ min: 0.01, max: 0.04, noNaN: true }),
  wall: fc.double({ min: 0.0008, max: 0.003, noNaN: true }),
  wallTip: fc.double({ min: 0.0008, max: 0.003, noNaN: true }),
  bulge: fc.double({ min: 0, max: 0.3, noNaN: true }),
});

function stiffness({ foot, tip, wall, wallTip, bulge }: Taper, x: number): number {
  const share = x / LENGTH;
  const bore = foot + (tip - foot) * share;
  const thick = (wall + (wallTip - wall) * share) * (1 + bulge * Math.sin(Math.PI * share));
  return (60e9 * Math.PI * ((bore + 2 * thick) ** 4 - bore ** 4)) / 64;
}

const stationsOf = (one: Taper) =>
  Array.from({ length: STATIONS }, (_, k) => {
    const at = (k * LENGTH) / (STATIONS - 1);
    return { at, ei: stiffness(one, at), gj: stiffness(one, at) / 2 };
  });

/** Deflection, slope, moment and shear at the tip from those at the foot, under an even load and an axial force. */
function carried(one: Taper, start: number[], load: number, axial: number): number[] {
  const solver = new odex.Solver(4);
  solver.relativeTolerance = 1e-8;
  solver.absoluteTolerance = 1e-10;
  const derivative = (x: number, [, slope = 0, moment = 0, shear = 0]: readonly number[]) => [
    slope,
    moment / stiffness(one, x),
    shear + axial * slope,
    load,
  ];
  return solver.solve(derivative, 0, start, LENGTH).y;
}

/** The start of four numbers, two of them sought, that ends with two of them nothing. */
function shot(one: Taper, sought: [number, number], nothing: [number, number], load: number, axial: number) {
  const from = (first: number, second: number) => {
    const start = [0, 0, 0, 0];
    start[sought[0]] = first;
    start[sought[1]] = second;
    return start;
  };
  const ends = (start: number[], q: number) => {
    const end = carried(one, start, q, axial);
    return [end[nothing[0]] ?? 0, end[nothing[1]] ?? 0] as const;
  };
  const [u, v, w] = [ends(from(1, 0), 0), ends(from(0, 1), 0), ends(from(0, 0), load)];
  const det = u[0] * v[1] - u[1] * v[0];
  const [first, second] = [(v[0] * w[1] - v[1] * w[0]) / det, (u[1] * w[0] - u[0] * w[1]) / det];
  const start = from(first, second);
  return { det, start, end: carried(one, start, load, axial) };
}

const evenLoad: BeamLoad = {
  kind: 'spread',
  stations: [
    { at: 0, value: 5 },
    { at: LENGTH, value: 5 },
  ],
};

describe('a random taper', () => {
  it('measured: held at its foot it bends as the integrator finds, within 1e-4', () => {
    fc.assert(
      fc.property(taper, (one) => {
        const { end } = shot(one, [2, 3], [2, 3], 5, 0);
        const beam = { stations: stationsOf(one), loads: [evenLoad], loadFactor: 1 };
        const { deflection, slope } = beamLine({ ...beam, supports: [{ kind: 'clamp', at: 0 }] });
        expect(Math.abs((deflection.at(-1) ?? 0) / (end[0] ?? 0) - 1)).toBeLessThan(1e-4);
        expect(Math.abs((slope.at(-1) ?? 0) / (end[1] ?? 0) - 1)).toBeLessThan(1e-4);
      }),
      { numRuns: 12 },
    );
  });

  it('measured: held at its foot and at its tip it gives back what the integrator finds, within 1e-4', () => {
    fc.assert(
      fc.property(taper, (one) => {
        const { start, end } = shot(one, [2, 3], [0, 2], 5, 0);
        const { moment, shear, slope } = beamLine({
          stations: stationsOf(one),
          loads: [evenLoad],
          loadFactor: 1,
          supports: [
            { kind: 'clamp', at: 0 },
            { kind: 'rest', at: LENGTH },
          ],
        });
        expect(Math.abs((moment[0] ?? 0) / (start[2] ?? 0) - 1)).toBeLessThan(1e-4);
        expect(Math.abs((shear[0] ?? 0) / (start[3] ?? 0) - 1)).toBeLessThan(1e-4);
        expect(Math.abs((slope.at(-1) ?? 0) / (end[1] ?? 0) - 1)).toBeLessThan(1e-4);
      }),
      { numRuns: 12 },
    );
  });

  it('measured: pressed, it buckles where the integrator finds no single shape, and bends as it finds before', () => {
    fc.assert(
      fc.property(taper, (one) => {
        const beam = {
          stations: stationsOf(one),
          supports: [{ kind: 'clamp' as const, at: 0 }],
          loadFactor: 1,
        };
        const { bucklingReserve: buckles } = beamColumn({
          ...beam,
          loads: [{ kind: 'axial', at: LENGTH, force: -1 }],
        });
        const side = (share: number) => Math.sign(shot(one, [2, 3], [2, 3], 5, -share * buckles).det);
        expect(side(1 - 1e-4)).not.toBe(side(1 + 1e-4));
        const force = buckles / 2;
        const { solution } = beamColumn({
          ...beam,
          loads: [evenLoad, { kind: 'axial', at: LENGTH, force: -force }],
        });
        const { start, end } = shot(one, [2, 3], [2, 3], 5, -force);
        expect(Math.abs((solution?.deflection.at(-1) ?? 0) / (end[0] ?? 0) - 1)).toBeLessThan(1e-4);
        expect(Math.abs((solution?.moment[0] ?? 0) / (start[2] ?? 0) - 1)).toBeLessThan(1e-4);
      }),
      { numRuns: 8 },
    );
  });

  it('measured: pressed and held at its foot and its tip, its supports push as the integrator finds, within 1e-4', () => {
    fc.assert(
      fc.property(taper, (one) => {
        const beam = {
          stations: stationsOf(one),
          supports: [
            { kind: 'clamp' as const, at: 0 },
            { kind: 'rest' as const, at: LENGTH },
          ],
          loadFactor: 1,
        };
        const press = (force: number): BeamLoad => ({ kind: 'axial', at: LENGTH, force });
        const force = beamColumn({ ...beam, loads: [press(-1)] }).bucklingReserve / 2;
        const { solution } = beamColumn({ ...beam, loads: [evenLoad, press(-force)] });
        const { start, end } = shot(one, [2, 3], [0, 2], 5, -force);
        const [foot, tip] = solution?.reactions ?? [];
        expect(Math.abs((foot?.force ?? 0) / (start[3] ?? 0) - 1)).toBeLessThan(1e-4);
        expect(Math.abs((foot?.moment ?? 0) / -(start[2] ?? 0) - 1)).toBeLessThan(1e-4);
        expect(Math.abs((tip?.force ?? 0) / -(end[3] ?? 0) - 1)).toBeLessThan(1e-4);
        expect((solution?.moment[0] ?? 0) / (start[2] ?? 0)).toBeCloseTo(1, 4);
      }),
      { numRuns: 8 },
    );
  });

  it('arithmetic: pressed over three supports, they push back with as much as it bears, and turn by nothing', () => {
    const beam = {
      stations: stationsOf({ foot: 0.04, tip: 0.02, wall: 0.001, wallTip: 0.001, bulge: 0 }),
      supports: [
        { kind: 'clamp' as const, at: 0 },
        { kind: 'rest' as const, at: 1.2 },
        { kind: 'rest' as const, at: LENGTH },
      ],
      loadFactor: 1,
    };
    const { solution } = beamColumn({
      ...beam,
      loads: [evenLoad, { kind: 'axial', at: LENGTH, force: -300 }],
    });
    const push = solution?.reactions ?? [];
    const turns = push.reduce((sum, { at, force, moment }) => sum + force * at + moment, 0);
    expect(push.map(({ force }) => Math.sign(force))).toEqual([-1, -1, -1]);
    expect(push.reduce((sum, { force }) => sum + force, 0)).toBeCloseTo(-5 * LENGTH, 8);
    expect(turns).toBeCloseTo((-5 * LENGTH ** 2) / 2, 8);
  });
});
