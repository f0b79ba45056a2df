// arithmetic, measured, prescribed, practice: as explained in laminate.test.ts.

import { describe, expect, it } from 'vitest';
import { type BeamLoad, type BeamSolution, beamColumn, beamLine, type Support } from '#calc';

const [L, EI, GJ] = [3, 2000, 800];
const even = [
  { at: 0, ei: EI, gj: GJ },
  { at: L, ei: EI, gj: GJ },
];
const solve = (supports: readonly Support[], ...loads: BeamLoad[]) =>
  beamLine({ stations: even, supports, loads, loadFactor: 1 });
const clamp = (at = 0): Support => ({ kind: 'clamp', at });
const rest = (at: number): Support => ({ kind: 'rest', at });
const point = (at: number, force: number): BeamLoad => ({ kind: 'point', at, force });
const spread = (...stations: readonly [number, number][]): BeamLoad => ({
  kind: 'spread',
  stations: stations.map(([at, value]) => ({ at, value })),
});
/** Of what is drawn at a place, after it where it jumps. */
const at = (solution: BeamSolution, series: 'deflection' | 'slope' | 'moment' | 'twist', place: number) =>
  [...solution[series]].filter((_, i) => Math.abs((solution.at[i] ?? 0) - place) < 1e-9).at(-1) ?? Number.NaN;
const expectShare = (got: number, wanted: number, room = 1e-6) =>
  expect(Math.abs(got / wanted - 1)).toBeLessThan(room);

describe('beams of the textbook', () => {
  // Gere and Timoshenko, Mechanics of Materials, appendix on deflections and slopes of beams.
  const [P, q, C, a] = [100, 40, 30, 1.2];
  const b = L - a;

  it.each([
    ['tip load', point(L, P), (P * L ** 3) / (3 * EI), (P * L ** 2) / (2 * EI)],
    ['load on its way', point(a, P), (P * a * a * (3 * L - a)) / (6 * EI), (P * a * a) / (2 * EI)],
    ['even load', spread([0, q], [L, q]), (q * L ** 4) / (8 * EI), (q * L ** 3) / (6 * EI)],
    ['load that runs out', spread([0, q], [L, 0]), (q * L ** 4) / (30 * EI), (q * L ** 3) / (24 * EI)],
    [
      'load over the near part',
      spread([0, q], [a, q]),
      (q * a ** 3 * (4 * L - a)) / (24 * EI),
      (q * a ** 3) / (6 * EI),
    ],
    ['tip moment', { kind: 'moment', at: L, moment: C } as const, (C * L * L) / (2 * EI), (C * L) / EI],
  ])('arithmetic: a cantilever under a %s bends as the table says', (_, load, deflection, slope) => {
    const solution = solve([clamp()], load);
    expectShare(at(solution, 'deflection', L), deflection);
    expectShare(at(solution, 'slope', L), slope);
  });

  it('arithmetic: between two rests it bends as the table says, under point, even load and moment', () => {
    const ends = [rest(0), rest(L)];
    const middle = point(L / 2, P);
    expectShare(at(solve(ends, middle), 'deflection', L / 2), (P * L ** 3) / (48 * EI));
    expectShare(at(solve(ends, middle), 'moment', L / 2), (-P * L) / 4);
    const aside = solve(ends, point(a, P));
    expectShare(at(aside, 'deflection', a), (P * b * a * (L * L - b * b - a * a)) / (6 * L * EI));
    const marked = spread([0, q], [L / 2, q], [L, q]);
    expectShare(at(solve(ends, marked), 'deflection', L / 2), (5 * q * L ** 4) / (384 * EI));
    const turned = solve(ends, { kind: 'moment', at: 0, moment: C });
    expectShare(at(turned, 'slope', 0), (C * L) / (3 * EI));
    expectShare(at(turned, 'slope', L), (-C * L) / (6 * EI));
  });

  it('arithmetic: over a rest with an overhang the tip bends as the table says', () => {
    const solution = solve([rest(0), rest(2)], point(L, P));
    expectShare(at(solution, 'deflection', L), (P * 1 * 1 * 3) / (3 * EI));
    expect(solution.reactions[0]?.force).toBeCloseTo(P / 2, 9);
    expect(solution.reactions[1]?.force).toBeCloseTo(-1.5 * P, 9);
  });

  it('arithmetic: a sleeve holds it by two contacts, as two rests there', () => {
    const sleeve = solve([{ kind: 'sleeve', from: 0, to: 0.3 }], point(L, P));
    const rests = solve([rest(0), rest(0.3)], point(L, P));
    expectShare(at(sleeve, 'deflection', L), at(rests, 'deflection', L), 1e-12);
    const out = L - 0.3;
    expectShare(at(sleeve, 'deflection', L), (P * out * out * L) / (3 * EI));
    expect(sleeve.reactions[1]?.force).toBeCloseTo((-P * L) / 0.3, 6);
  });

  // Statically indeterminate: Gere and Timoshenko, chapter on them, and Roark's table of beams.
  it('arithmetic: held more than it must be, it gives back what the table says', () => {
    const propped = solve([clamp(), rest(L)], spread([0, q], [L, q]));
    expectShare(-(propped.reactions[1]?.force ?? 0), (3 * q * L) / 8);
    expectShare(at(propped, 'moment', 0), (q * L * L) / 8);
    const built = solve([clamp(0), clamp(L)], point(L / 2, P));
    expectShare(at(built, 'deflection', L / 2), (P * L ** 3) / (192 * EI));
    expectShare(at(built, 'moment', 0), (P * L) / 8);
    const three = solve([rest(0), rest(L / 2), rest(L)], spread([0, q], [L, q]));
    expectShare(-(three.reactions[1]?.force ?? 0), (5 * q * L) / 8);
    expectShare(-(three.reactions[0]?.force ?? 0), (3 * q * L) / 16);
  });

  it('arithmetic: twists by TL/GJ, and half of it under a torque spread evenly; two holders share it', () => {
    const end = solve([clamp()], { kind: 'torque', at: L, torque: 8 });
    expectShare(at(end, 'twist', L), (8 * L) / GJ);
    const along = solve([clamp()], {
      kind: 'spreadTorque',
      stations: [
        { at: 0, value: 5 },
        { at: L, value: 5 },
      ],
    });
    expectShare(at(along, 'twist', L), (5 * L * L) / (2 * GJ));
    const shared = solve([clamp(0), clamp(L)], { kind: 'torque', at: 1, torque: 9 });
    expectShare(at(shared, 'twist', 1), (9 * 1 * 2) / (L * GJ));
    expectShare(shared.reactions[0]?.torque ?? 0, -6);
  });

  it('arithmetic: carries an axial force from where it acts to what holds it', () => {
    const mast = solve([{ kind: 'rest', at: 0, holdsAxial: true }, rest(2)], {
      kind: 'axial',
      at: L,
      force: -70,
    });
    expect([...mast.axial]).toEqual([-70, -70, -70]);
    expect(mast.reactions[0]?.axial).toBe(70);
  });
});

describe('tapers of the textbook', () => {
  const tip = 500;
  const taper = (power: number, stations: number) =>
    Array.from({ length: stations }, (_, k) => {
      const x = (k * L) / (stations - 1);
      const grown = tip * (2 - x / L) ** power;
      return { at: x, ei: grown, gj: grown };
    });
  const hung = (power: number, stations: number) =>
    at(
      beamLine({
        stations: taper(power, stations),
        supports: [clamp()],
        loads: [point(L, 100)],
        loadFactor: 1,
      }),
      'deflection',
      L,
    );

  // Gere, Mechanics of Materials (from memory): round, d at the tip to 2 d at the foot: P L^3/(24 E I_tip).
  it('arithmetic: a solid round cantilever from d to 2 d, told at its two ends or at twelve stations', () => {
    const wanted = (100 * L ** 3) / (24 * tip);
    expectShare(hung(4, 2), wanted, 1e-7);
    expectShare(hung(4, 12), wanted, 1e-7);
  });

  // Gere: thin-walled of even wall, diameter from d to 2 d, EI by the third power: (P L^3/EI_tip)(ln 2 - 5/8); of even
  // height and twice the width, EI by the first: (P L^3/EI_tip)(ln 2 - 1/2). Both integrated by hand as well.
  it('arithmetic: a thin-walled one, and one by its width, at twelve stations', () => {
    expectShare(hung(3, 12), ((100 * L ** 3) / tip) * (Math.log(2) - 5 / 8), 1e-5);
    expectShare(hung(1, 12), ((100 * L ** 3) / tip) * (Math.log(2) - 1 / 2), 1e-5);
  });
});

describe('pressed tubes of the textbook', () => {
  const pressed = (supports: readonly Support[], force: number, ...more: BeamLoad[]) =>
    beamColumn({
      stations: even,
      supports,
      loads: [{ kind: 'axial', at: L, force: -force }, ...more],
      loadFactor: 1,
    });
  const heel: Support = { kind: 'rest', at: 0, holdsAxial: true };
  const euler = (Math.PI ** 2 * EI) / L ** 2;

  // Euler 1744; Timoshenko and Gere, Theory of Elastic Stability, section 2.1: free to turn, a flagpole, clamped and
  // held at the tip (tan u = u, u = 4.493409), clamped and guided by two contacts close together.
  it('arithmetic: buckle at the loads of Euler, for every way to hold them', () => {
    expectShare(pressed([heel, rest(L)], 1000).bucklingReserve, euler / 1000);
    expectShare(pressed([clamp()], 100).bucklingReserve, euler / 400);
    expectShare(
      pressed([clamp(), rest(L)], 1000).bucklingReserve,
      (4.493409457909064 ** 2 * EI) / L ** 2 / 1000,
    );
    expectShare(pressed([heel, rest(L / 2), rest(L)], 1000).bucklingReserve, (4 * euler) / 1000);
  });

  // Timoshenko and Gere, section 1.3: between two rests under an even load and P: moment q L^2/8 times
  // 2 (sec u - 1)/u^2, deflection 5 q L^4/(384 EI) times 12 (2 sec u - 2 - u^2)/(5 u^4), u = (pi/2) sqrt(P/Euler).
  it.each([0.1, 0.5, 0.9])('arithmetic: bend as beam-columns, at %s of what buckles them', (share) => {
    const u = (Math.PI / 2) * Math.sqrt(share);
    const load = spread([0, 40], [L / 2, 40], [L, 40]);
    const { solution, amplification } = pressed([heel, rest(L)], share * euler, load);
    if (!solution) throw new Error('it has not buckled');
    const sec = 1 / Math.cos(u);
    const moment = ((40 * L * L) / 8) * ((2 * (sec - 1)) / u ** 2);
    expectShare(-at(solution, 'moment', L / 2), moment, 1e-5);
    expectShare(amplification, (2 * (sec - 1)) / u ** 2, 1e-5);
    const far = ((5 * 40 * L ** 4) / (384 * EI)) * ((12 * (2 * sec - 2 - u * u)) / (5 * u ** 4));
    expectShare(at(solution, 'deflection', L / 2), far, 1e-5);
  });

  it('arithmetic: are stiffer pulled than at rest, and past buckling they have no shape to show', () => {
    const pulled = pressed([heel, rest(L)], -euler, point(L / 2, 100));
    expect(pulled.bucklingReserve).toBe(1e6);
    expect(pulled.amplification).toBeLessThan(1);
    expect(pressed([heel, rest(L)], 1.01 * euler).solution).toBeUndefined();
  });

  // Timoshenko and Gere, table of bars of changing section: I by the fourth power of the distance from the apex, free
  // to turn at both ends: P = (pi^2 + ...)... in closed form P = pi^2 E sqrt(I1 I2)/L^2 for the fourth power.
  it('arithmetic: a cone from d to 2 d, free to turn, buckles at pi^2 E sqrt(I1 I2)/L^2', () => {
    const cone = [
      { at: 0, ei: 16 * 500, gj: 1 },
      { at: L, ei: 500, gj: 1 },
    ];
    const loads: BeamLoad[] = [{ kind: 'axial', at: L, force: -1000 }];
    const { bucklingReserve } = beamColumn({
      stations: cone,
      supports: [heel, rest(L)],
      loads,
      loadFactor: 1,
    });
    expectShare(bucklingReserve, (Math.PI ** 2 * 4 * 500) / L ** 2 / 1000, 1e-5);
  });
});
