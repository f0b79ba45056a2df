import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BeamLoad,
  beamLine,
  effectiveModulus,
  firstPly,
  pliesAt,
  proofLoad,
  rescaleLamina,
  type Support,
  tubeChecks,
  type WantedInput,
  wallSection,
  wantedPlies,
  wovenPlies,
} from '#calc';
import { plies, rolledOn, straight } from './wall-pieces.ts';

const carbon = { e1: 105e9, e2: 7.5e9, g12: 3e9, nu12: 0.3 };
const strength = { xt: 1.1e9, xc: 5e8, yt: 3e7, yc: 1.2e8, s: 5e7 };
const ply = { ...carbon, strength, density: 1500, angle: 0, thickness: 0.0003 };
const clamp: Support = { kind: 'clamp', at: 0 };
const tip = (force: number): BeamLoad => ({ kind: 'point', at: 3, force });

describe('a ply at another fiber volume', () => {
  const volume = fc.double({ min: 0.25, max: 0.7, noNaN: true });

  it('comes back as it was, with thickness and strength along, but for what pressing was knocked down', () => {
    fc.assert(
      fc.property(volume, volume, (statedFiberVolume, fiberVolumeFraction) => {
        const resin = { e: 3e9, nu: 0.35 };
        const there = rescaleLamina({
          lamina: carbon,
          resin,
          statedFiberVolume,
          fiberVolumeFraction,
          thickness: 0.0003,
          strength,
          compressionKnockdown: 0.65,
        });
        const back = rescaleLamina({
          lamina: there,
          resin,
          statedFiberVolume: fiberVolumeFraction,
          fiberVolumeFraction: statedFiberVolume,
          thickness: there.thickness,
          strength: there.strength,
          compressionKnockdown: 1,
        });
        for (const field of ['e1', 'e2', 'g12', 'nu12'] as const) {
          expect(back[field] / carbon[field]).toBeCloseTo(1, 9);
        }
        expect(back.thickness / 0.0003).toBeCloseTo(1, 9);
        expect((back.strength?.xt ?? 0) / strength.xt).toBeCloseTo(1, 9);
        expect((back.strength?.xc ?? 0) / (0.65 * strength.xc)).toBeCloseTo(1, 9);
        expect(there.strength?.yt).toBe(strength.yt);
      }),
    );
  });

  it('says what was assumed, and that it knows stiffness only where no strength is given', () => {
    const input = {
      lamina: carbon,
      resin: { e: 3e9, nu: 0.35 },
      statedFiberVolume: 0.45,
      fiberVolumeFraction: 0.35,
      thickness: 0.0003,
    };
    expect(rescaleLamina(input).assumed).toContain('stiffness only');
    expect(rescaleLamina(input).assumed).toContain('fiber stiffer than any across');
    expect(() => rescaleLamina({ ...input, strength })).toThrow('compressionKnockdown');
  });
});

describe('a section along the tube', () => {
  it('of whole wraps is round, and of a wrap more over a part is stiffer one way than the other', () => {
    const whole = wallSection({ innerDiameter: 0.038, plies: [ply, ply] });
    expect(whole.shift).toBe(0);
    expect(whole.eiMost).toBeCloseTo(whole.eiLeast, 6);
    const more = wallSection({
      innerDiameter: 0.038,
      plies: [ply, ply, { ...ply, arc: { from: 0, to: Math.PI } }],
    });
    expect(more.eiLeast).toBeGreaterThan(whole.eiLeast);
    expect(more.eiMost).toBeGreaterThan(more.eiLeast * 1.01);
    expect(more.shiftToward).toBeCloseTo(Math.PI / 2, 9);
    expect([more.wallMin, more.wallMax]).toEqual([0.0006, expect.closeTo(0.0009, 12)]);
  });

  it('is the same however the tube is turned', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -6, max: 6, noNaN: true }),
        fc.double({ min: 0.2, max: 6, noNaN: true }),
        (turn, over) => {
          const at = (from: number) =>
            wallSection({ innerDiameter: 0.03, plies: [ply, { ...ply, arc: { from, to: from + over } }] });
          const [here, there] = [at(0), at(turn)];
          for (const field of ['eiLeast', 'eiMost', 'gj', 'ea', 'ringStiffness', 'area'] as const) {
            expect(there[field] / here[field]).toBeCloseTo(1, 9);
          }
        },
      ),
    );
  });

  it('takes the wraps of a rolled piece, woven ones as two halves, and a core as room only', () => {
    const roll = rolledOn(0.038, 3, plies(straight([0, 3], [3, 2])));
    const found = pliesAt({ roll, at: 1.5, materials: [{ ...carbon, crimpFactor: 0.9 }] });
    expect(found.plies).toHaveLength(6);
    expect(found.plies.at(-1)).toMatchObject({ arc: { from: 0, to: expect.closeTo(Math.PI, 9) } });
    const [warp, weft] = wovenPlies({ material: carbon, crimpFactor: 0.9, angle: 0.2, thickness: 0.0003 });
    expect([warp.e1, weft.angle - warp.angle]).toEqual([0.9 * carbon.e1, expect.closeTo(Math.PI / 2, 12)]);
    const core = { carries: false, thickness: 0.003 } as const;
    const sandwich = wallSection({ innerDiameter: 0.038, plies: [ply, core, ply] });
    const bare = wallSection({ innerDiameter: 0.038, plies: [ply, ply] });
    expect(sandwich.ringStiffness / bare.ringStiffness).toBeGreaterThan(30);
    expect(() => wallSection({ innerDiameter: 0.038, plies: [core] })).toThrow(/^plies must carry all round/);
  });
});

describe('what cannot be held is told at its field', () => {
  const stations = [
    { at: 0, ei: 2000, gj: 800 },
    { at: 3, ei: 2000, gj: 800 },
  ];
  const solve = (supports: readonly Support[], ...loads: BeamLoad[]) =>
    beamLine({ stations, supports, loads, loadFactor: 1 });

  it('a mechanism, a load off the tube, a twist and a push that nothing holds', () => {
    const rests: Support[] = [
      { kind: 'rest', at: 0 },
      { kind: 'rest', at: 3 },
    ];
    expect(() => solve([], tip(1))).toThrow(/^supports must be a list of at least 1/);
    expect(() => solve(rests.slice(1), tip(1))).toThrow(/^supports must hold the tube/);
    expect(() => solve([...rests, { kind: 'rest', at: 3 }])).toThrow(
      /^supports must each have their own place/,
    );
    expect(() => solve([clamp], { kind: 'point', at: 3.1, force: 1 })).toThrow('loads[0].at must be');
    expect(() => solve(rests, { kind: 'torque', at: 1, torque: 1 })).toThrow(/^supports must hold the twist/);
    expect(() => solve(rests, { kind: 'axial', at: 1, force: 1 })).toThrow(
      /^supports must hold it along its axis/,
    );
  });

  it('and two loads together bend as much as each alone, times the load factor', () => {
    const far = (factor: number, ...loads: BeamLoad[]) =>
      beamLine({ stations, supports: [clamp], loads, loadFactor: factor }).deflection.at(-1) ?? 0;
    const other: BeamLoad = { kind: 'moment', at: 2, moment: 15 };
    expect(far(2, tip(10), other)).toBeCloseTo(2 * (far(1, tip(10)) + far(1, other)), 12);
  });
});

describe('checks along a tube', () => {
  const section = wallSection({ innerDiameter: 0.038, plies: [ply, ply, { ...ply, angle: 1.2 }, ply] });
  const tube = {
    stations: [0, 1.5, 3].map((at) => ({ at, section })),
    supports: [clamp],
    cases: [
      { loads: [tip(20)], loadFactor: 1 },
      { loads: [tip(40)], loadFactor: 1 },
    ],
    safetyFactor: 1.5,
    freeLength: 3,
  };

  it('take the worst case at each station, and halve every reserve when loads double', () => {
    const { cases, stations } = tubeChecks(tube);
    expect(stations[0]?.of).toBe(1);
    const [light, heavy] = cases.map((one) => one.stations[0]?.margins ?? []);
    light?.forEach(({ reserve }, k) => {
      expect(reserve / (heavy?.[k]?.reserve ?? 0)).toBeCloseTo(2, 9);
    });
    expect(stations[0]?.least.margin).toBeCloseTo((stations[0]?.least.reserve ?? 0) / 1.5 - 1, 12);
  });

  it('leave strength out where a ply has none, and say so; a safety factor below 1 is refused', () => {
    const bare = wallSection({
      innerDiameter: 0.038,
      plies: [ply, { ...carbon, angle: 0, thickness: 0.0003 }],
    });
    expect(firstPly({ section: bare, moment: 1, shear: 0, torque: 0, axial: 0 })).toBeUndefined();
    const found = tubeChecks({ ...tube, stations: [0, 3].map((at) => ({ at, section: bare })) });
    expect(found.strengthsKnown).toBe(false);
    expect(found.cases[0]?.stations[0]?.margins.map(({ check }) => check)).toEqual([
      'wall buckling',
      'ovalization',
    ]);
    expect(() => tubeChecks({ ...tube, safetyFactor: 0.9 })).toThrow('safetyFactor must be at least 1');
    const off = { loads: [{ kind: 'point', at: 4, force: 1 } as const], loadFactor: 1 };
    expect(() => tubeChecks({ ...tube, cases: [off] })).toThrow('cases[0].loads[0].at');
  });
});

describe('wanted plies', () => {
  const wanted: WantedInput = {
    stations: [0, 0.5, 1, 1.5, 2, 2.5, 3].map((at) => ({ at, innerDiameter: 0.038 })),
    always: [],
    ply: [ply],
    least: 2,
    most: 20,
    supports: [clamp],
    cases: [{ loads: [tip(80)], loadFactor: 1 }],
    safetyFactor: 1.5,
    freeLength: 3,
    dropLength: 0.2,
    onePeak: true,
  };

  it('are fewest: everything holds, and a ply less at the foot would not', () => {
    const found = wantedPlies(wanted);
    expect(found.met).toBe(true);
    expect(found.mass ?? 0).toBeLessThan(found.constantMass ?? 0);
    const counts = found.stations.map((one) => one.plies);
    expect(counts).toEqual([...counts].sort((a, b) => b - a));
    expect(wantedPlies({ ...wanted, most: (counts[0] ?? 0) - 1 }).met).toBe(false);
    expect(found.stations.every(({ margin }) => margin >= 0)).toBe(true);
    expect(found.stations[0]?.rules).not.toBe('least');
  });

  it('drop no steeper than was chosen', () => {
    const { stations } = wantedPlies({ ...wanted, dropLength: 0.5, onePeak: false });
    stations.slice(1).forEach(({ plies: n }, k) => {
      expect(Math.abs(n - (stations[k]?.plies ?? 0))).toBeLessThanOrEqual(1);
    });
  });

  it('are one where one may be and nothing pulls, and none is refused', () => {
    const idle = { ...wanted, least: 1, cases: [{ loads: [tip(0.001)], loadFactor: 1 }] };
    expect(wantedPlies(idle).stations.map(({ plies: n }) => n)).toEqual(wanted.stations.map(() => 1));
    expect(() => wantedPlies({ ...wanted, least: 0 })).toThrow('least must be at least 1');
  });

  it('are more where it may bend less, and the limit is said to rule', () => {
    const found = wantedPlies({ ...wanted, deflectionLimit: 0.15 });
    expect(found.deflection).toBeLessThanOrEqual(0.15);
    expect(found.stations.map(({ rules }) => rules)).toContain('deflection');
  });
});

describe('a proof test', () => {
  it('bends the most loaded place as the design does, and its own result gives the modulus back', () => {
    const stations = [
      { at: 0, ei: 2000, gj: 800 },
      { at: 3, ei: 900, gj: 300 },
    ];
    const design = beamLine({ stations, supports: [clamp], loads: [tip(100)], loadFactor: 1 });
    const test = proofLoad({ stations, supports: [clamp], hangAt: 2, design, proofFactor: 1.2 });
    expect(test.matchedAt).toBe(0);
    expect(test.solution.moment[0]).toBeCloseTo(360, 9);
    expect(test.mostOver).toBeCloseTo(1, 9);
    expect(() => proofLoad({ stations, supports: [clamp], hangAt: 0, design, proofFactor: 1 })).toThrow(
      'hangAt',
    );
    const points = [...test.solution.deflection].map((expected) => ({ expected, measured: expected / 0.85 }));
    const { factor, scatter } = effectiveModulus({ points, plannedModulus: 90e9 });
    expect(factor).toBeCloseTo(0.85, 9);
    expect(scatter).toBeCloseTo(0, 9);
  });
});
