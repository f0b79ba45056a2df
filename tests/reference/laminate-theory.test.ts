// arithmetic, measured, prescribed, practice: as explained in laminate.test.ts.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hoopExpansion, laminaStiffness, laminateExpansion, laminateStiffness, type Ply } from '#calc';

const degrees = (angle: number) => (angle * Math.PI) / 180;
const graphite = { e1: 181e9, e2: 10.3e9, g12: 7.17e9, nu12: 0.28 };
const at = (angle: number, thickness = 0.005): Ply => ({ ...graphite, angle: degrees(angle), thickness });

/** To four digits, as the book prints. */
function expectPrinted(got: readonly (readonly number[])[], rows: readonly (readonly number[])[]): void {
  rows.forEach((row, i) => {
    row.forEach((printed, j) => {
      expect(Math.abs((got[i]?.[j] ?? 0) / printed - 1)).toBeLessThan(5.1e-4);
    });
  });
}

describe('laminates of the textbook', () => {
  // Kaw, Mechanics of Composite Materials, 2nd ed., example 2.6 (read in part).
  it('arithmetic: a graphite/epoxy ply is as stiff as in example 2.6', () => {
    const { q11, q12, q22, q66 } = laminaStiffness(graphite);
    expectPrinted([[q11, q12, q22, q66]], [[181.8e9, 2.897e9, 10.35e9, 7.17e9]]);
  });

  // Kaw, example 4.2 (from memory): [0/30/-45], plies of 5 mm, 0 at the bottom of the list's order.
  it('arithmetic: a laminate [0/30/-45] is as in example 4.2', () => {
    const { a, b, d } = laminateStiffness([at(0), at(30), at(-45)]);
    expectPrinted(a, [
      [1.739e9, 3.884e8, 5.663e7],
      [3.884e8, 4.533e8, -1.141e8],
      [5.663e7, -1.141e8, 4.525e8],
    ]);
    expectPrinted(b, [
      [-3.129e6, 9.855e5, -1.072e6],
      [9.855e5, 1.158e6, -1.072e6],
      [-1.072e6, -1.072e6, 9.855e5],
    ]);
    expectPrinted(d, [
      [3.343e4, 6.461e3, -5.24e3],
      [6.461e3, 9.32e3, -5.596e3],
      [-5.24e3, -5.596e3, 7.663e3],
    ]);
  });

  // Gere and Timoshenko, Mechanics of Materials, plane stress and plates: E/(1 - nu^2), D = E h^3/(12 (1 - nu^2)).
  it('arithmetic: of one metal it is the plate of the textbook, however its plies are turned', () => {
    const [e, nu] = [70e9, 0.33];
    const metal = { e1: e, e2: e, g12: e / (2 * (1 + nu)), nu12: nu };
    const plies = [0, 0.4, 1.3].map((angle) => ({ ...metal, angle, thickness: 0.001 }));
    const { a, b, d } = laminateStiffness(plies);
    const [h, plane] = [0.003, e / (1 - nu * nu)];
    for (const [got, size] of [
      [a, h],
      [d, h ** 3 / 12],
    ] as const) {
      expect(got[0][0] / (plane * size)).toBeCloseTo(1, 12);
      expect(got[1][1] / (plane * size)).toBeCloseTo(1, 12);
      expect(got[0][1] / (nu * plane * size)).toBeCloseTo(1, 12);
      expect(got[2][2] / (metal.g12 * size)).toBeCloseTo(1, 12);
      expect(Math.abs(got[0][2]) / (plane * size)).toBeLessThan(1e-12);
    }
    for (const row of b) for (const value of row) expect(Math.abs(value)).toBeLessThan(1e-9 * plane * h * h);
  });
});

describe('laminates that must not pull crooked', () => {
  const angle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });
  const thickness = fc.double({ min: 1e-4, max: 1e-3, noNaN: true });
  const half = fc.array(fc.record({ angle, thickness }), { minLength: 1, maxLength: 6 });
  const largest = (m: readonly (readonly number[])[]) => Math.max(...m.flat().map(Math.abs));

  it('have no coupling of stretch and bending when they are symmetric', () => {
    fc.assert(
      fc.property(half, (plies) => {
        const own = plies.map((p) => ({ ...graphite, ...p }));
        const { a, b } = laminateStiffness([...own, ...[...own].reverse()]);
        const total = 2 * own.reduce((sum, p) => sum + p.thickness, 0);
        expect(largest(b)).toBeLessThan(1e-12 * largest(a) * total);
      }),
    );
  });

  it('do not shear when stretched when every ply has its mirror', () => {
    fc.assert(
      fc.property(half, (plies) => {
        const own = plies.map((p) => ({ ...graphite, ...p }));
        const { a } = laminateStiffness([...own, ...own.map((p) => ({ ...p, angle: -p.angle }))]);
        expect(Math.abs(a[0][2])).toBeLessThan(1e-12 * largest(a));
        expect(Math.abs(a[1][2])).toBeLessThan(1e-12 * largest(a));
      }),
    );
  });

  it('show the same stiffness turned by half a turn, and x for y by a quarter', () => {
    fc.assert(
      fc.property(half, (plies) => {
        const own = (by: number) => plies.map((p) => ({ ...graphite, ...p, angle: p.angle + by }));
        const { a } = laminateStiffness(own(0));
        expect(laminateStiffness(own(Math.PI)).a[0][0] / a[0][0]).toBeCloseTo(1, 9);
        expect(laminateStiffness(own(Math.PI / 2)).a[1][1] / a[0][0]).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe("Poisson's ratio", () => {
  // Lempriere 1968, quoted in every textbook of composites: |nu12| < sqrt(E1/E2).
  it('may be anything a real material can have, and no more', () => {
    const limit = Math.sqrt(graphite.e1 / graphite.e2);
    for (const nu12 of [0.99 * limit, -0.99 * limit, 0]) {
      expect(laminaStiffness({ ...graphite, nu12 }).q11).toBeGreaterThan(0);
    }
    for (const nu12 of [limit, -limit, 5]) {
      expect(() => laminaStiffness({ ...graphite, nu12 })).toThrow('nu12 must be greater than');
      expect(() => laminateStiffness([at(0), { ...at(0), nu12 }])).toThrow('plies[1].nu12');
      expect(() => hoopExpansion({ ...graphite, alpha1: 0, alpha2: 1e-5, nu12 })).toThrow('nu12');
    }
  });
});

describe('growth with heat', () => {
  const grows = { alpha1: 0.02e-6, alpha2: 22.5e-6 };
  const modulus = fc.double({ min: 1e9, max: 3e11, noNaN: true });
  const alpha = fc.double({ min: -5e-6, max: 8e-5, noNaN: true });
  const ply = fc.record({
    e1: modulus,
    e2: modulus,
    g12: modulus,
    nu12: fc.double({ min: 0, max: 0.05, noNaN: true }),
    alpha1: alpha,
    alpha2: alpha,
  });

  it('of half along and half around is that of balanced cloth, and so it is at 45 degrees', () => {
    fc.assert(
      fc.property(ply, fc.double({ min: 0, max: 3, noNaN: true }), (own, turn) => {
        const plies = [0, Math.PI / 2].map((angle) => ({ ...own, angle: angle + turn, thickness: 2e-4 }));
        const { axial, hoop, twist } = laminateExpansion(plies);
        const cloth = hoopExpansion(own);
        expect(Math.abs(hoop - cloth)).toBeLessThan(1e-14);
        expect(Math.abs(axial - cloth)).toBeLessThan(1e-14);
        expect(Math.abs(twist)).toBeLessThan(1e-14);
      }),
    );
  });

  it('of fibers all along is that of the ply, across around the hoop', () => {
    const { axial, hoop } = laminateExpansion([{ ...at(0), ...grows }]);
    expect(axial).toBeCloseTo(grows.alpha1, 15);
    expect(hoop).toBeCloseTo(grows.alpha2, 15);
  });

  it('of one metal is that of the metal', () => {
    const metal = { e1: 69e9, e2: 69e9, nu12: 0.33, alpha1: 23.6e-6, alpha2: 23.6e-6 };
    expect(hoopExpansion(metal)).toBeCloseTo(23.6e-6, 15);
  });

  // The residual of the equation that it solves, for plies of any directions.
  it('leaves no force in the wall', () => {
    const plies = [10, -35, 80].map((angle, i) => ({ ...at(angle, 1e-4 * (i + 1)), ...grows }));
    const { axial, hoop, twist } = laminateExpansion(plies);
    const { a } = laminateStiffness(plies);
    let push = 0;
    for (const p of plies) {
      const { a: own } = laminateStiffness([p]);
      const [c, s] = [Math.cos(p.angle), Math.sin(p.angle)];
      const x = grows.alpha1 * c * c + grows.alpha2 * s * s;
      const y = grows.alpha1 * s * s + grows.alpha2 * c * c;
      push += own[1][0] * x + own[1][1] * y + own[1][2] * 2 * (grows.alpha1 - grows.alpha2) * c * s;
    }
    const held = a[1][0] * axial + a[1][1] * hoop + a[1][2] * twist;
    expect(held / push).toBeCloseTo(1, 10);
  });
});
