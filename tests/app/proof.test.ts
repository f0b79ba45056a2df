import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  asItsLoads,
  expectedEach,
  gentleMass,
  type PlannedTube,
  plannedModulus,
} from '#app/laying-up/proof/bend.ts';
import { isSet, isTested, proofTests, ringOf, setOf, stiffnessOf } from '#app/laying-up/proof/results.ts';
import {
  begun,
  gaveWayDraft,
  nextReading,
  proofDrafts,
  type Running,
  withoutLast,
  withReading,
} from '#app/laying-up/proof/running.ts';
import {
  dialPlaces,
  firstSetup,
  fitted,
  freeOf,
  heldFrom,
  heldRecord,
  type Setup,
} from '#app/laying-up/proof/setup.ts';
import { expectedNarrower, thinEnd, whyNot } from '#app/laying-up/proof/squeezing.ts';
import { summarize } from '#app/state/summarize.ts';
import { beamLine, wallSection } from '#calc';
import { buildHeader } from '../record/arbitraries.ts';
import { buildOf, type Event, entriesOf } from './shop-of.ts';

const gravity = 9.80665;

/** Aluminum, 38 mm bore, 1.25 mm wall, even, 2 m. */
const section = wallSection({
  innerDiameter: 0.038,
  plies: [{ e1: 69e9, e2: 69e9, g12: 26e9, nu12: 0.327, angle: 0, thickness: 0.00125 }],
});
const tube: PlannedTube = { length: 2, stations: [0, 2].map((at) => ({ at, section })) };
const ei = section.eiLeast;

const rests: Setup = { held: 'rests', from: 0.1, to: 1.9, hangAt: 1, mass: 5, dials: [1] };
const clamp: Setup = { held: 'clamp0', from: 0.2, to: 2, hangAt: 2, mass: 5, dials: [2] };

describe('what a weight should do', () => {
  // Gere, Mechanics of Materials, deflections of beams: F L^3/48EI in the middle of two rests, F L^3/3EI at a free end.
  it('is the handbook’s deflection between two rests and on what stands out of a clamp', () => {
    expect(expectedEach(tube, rests, 1)).toBeCloseTo((gravity * 1.8 ** 3) / (48 * ei), 9);
    expect(expectedEach(tube, clamp, 2)).toBeCloseTo((gravity * 1.8 ** 3) / (3 * ei), 9);
  });

  it('is upward beyond a rest', () => {
    expect(expectedEach(tube, rests, 0.02)).toBeLessThan(0);
  });

  it('goes by the modulus of the ring alone', () => {
    expect(plannedModulus(tube, rests)).toBeCloseTo(69e9, -7);
  });

  it('with nothing else to go by bends it by a hundredth of its length', () => {
    const mass = gentleMass(tube, clamp);
    expect(expectedEach(tube, clamp, 2) * mass).toBeCloseTo(0.02, 9);
  });

  it('is the load itself where the test is held and loaded as the load is', () => {
    const stations = tube.stations.map(({ at }) => ({ at, ei, gj: section.gj }));
    const design = beamLine({
      stations,
      supports: [{ kind: 'clamp', at: 0.2 }],
      loads: [{ kind: 'point', at: 2, force: 98.0665 }],
      loadFactor: 1.5,
    });
    expect(asItsLoads(tube, clamp, design)?.mass).toBeCloseTo(15, 6);
    // Hung where the loads bend it most, it would not bend it there at all.
    expect(asItsLoads(tube, { ...clamp, hangAt: 0.2 }, design)).toBeUndefined();
  });
});

describe('how a tube lies', () => {
  it('keeps weight and dials on what bends, whatever is moved', () => {
    const place = fc.double({ min: 0, max: 2, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom('rests', 'clamp0', 'clamp1'),
        place,
        fc.array(place, { maxLength: 3 }),
        (held, hangAt, dials) => {
          const first = firstSetup(2, held);
          const setup = fitted({ ...first, hangAt, dials }, 2);
          const { min, max } = freeOf(setup, 2);
          for (const at of [setup.hangAt, ...setup.dials]) {
            expect(at).toBeGreaterThanOrEqual(min);
            expect(at).toBeLessThanOrEqual(max);
          }
          expect(Number.isFinite(expectedEach(tube, setup, setup.hangAt))).toBe(true);
          expect(new Set(dialPlaces(setup, 2)).size).toBe(dialPlaces(setup, 2).length);
        },
      ),
    );
  });

  it('is told by its entry again', () => {
    expect(heldFrom(heldRecord(rests))).toEqual({ held: 'rests', from: 0.1, to: 1.9 });
    expect(heldFrom(heldRecord(clamp))).toMatchObject({ held: 'clamp0', from: 0.2 });
    expect(heldFrom(heldRecord({ held: 'clamp1', from: 0, to: 1.7 }))).toMatchObject({
      held: 'clamp1',
      to: 1.7,
    });
    expect(heldFrom(undefined)).toBeUndefined();
  });
});

const two = begun('test-1', { ...rests, dials: [1.4, 1] });
const read = (running: Running, ...figures: number[]): Running =>
  figures.reduce((now, mm) => {
    const next = nextReading(now);
    return next ? withReading(now, next.phase, mm / 1000, `${mm} mm`) : now;
  }, running);
const expecting = { each: () => 0.002, modulus: 70e9 };

describe('reading the dials', () => {
  it('goes through all of them before the weight, under it and after', () => {
    const order: string[] = [];
    let now = two;
    for (let next = nextReading(now); next; next = nextReading(now)) {
      order.push(`${next.phase} ${next.at}`);
      now = read(now, 1);
    }
    expect(order).toEqual(['before 1', 'before 1.4', 'under 1', 'under 1.4', 'after 1', 'after 1.4']);
  });

  it('takes the last one back', () => {
    const back = withoutLast(read(two, 1, 2, 3));
    expect(nextReading(back)).toMatchObject({ phase: 'under', dial: 0 });
    expect(nextReading(withoutLast(two))).toMatchObject({ phase: 'before', dial: 0 });
  });

  it('is one entry a dial, whichever way the dial counts', () => {
    const up = proofDrafts('b', read(two, 2, 3, 12, 10, 2.5, 3), expecting);
    const down = proofDrafts('b', read(two, 20, 30, 10, 23, 19.5, 30), expecting);
    expect(up).toMatchObject([
      { station: 1, deflection: 0.01, set: 0.0005, mass: 5, at: 1, test: 'test-1', expectedEach: 0.002 },
      { station: 1.4, deflection: 0.007, set: 0 },
    ]);
    expect(down).toMatchObject([
      { deflection: 0.01, set: 0.0005 },
      { deflection: 0.007, set: 0 },
    ]);
  });

  it('counts upward what was expected upward', () => {
    const [first] = proofDrafts('b', read(two, 5, 5, 3, 3), { each: () => -0.001, modulus: undefined });
    expect(first).toMatchObject({ deflection: -0.002 });
    expect(first).not.toHaveProperty('set');
  });

  it('is nothing as long as the weight is not on', () => {
    expect(proofDrafts('b', read(two, 5, 5), expecting)).toEqual([]);
  });
});

const load = (minute: number, more: Partial<Extract<Event, { kind: 'proofLoad' }>> = {}): Event => ({
  minute,
  kind: 'proofLoad',
  at: 1,
  mass: 10,
  station: 1,
  deflection: 0.02,
  expectedEach: 0.0018,
  plannedModulus: 90e9,
  ...more,
});

describe('what a test says', () => {
  it('is stiffness over plan: less far than expected is stiffer', () => {
    const [test] = proofTests(buildOf([load(1)]));
    const said = test && stiffnessOf(test);
    expect(said?.factor).toBeCloseTo(0.9, 9);
    expect(said?.modulus).toBeCloseTo(81e9, -3);
  });

  it('takes the readings of one weight together, and those of another apart', () => {
    const tests = proofTests(
      buildOf([
        load(1, { test: 'a' }),
        load(2, { test: 'a', station: 0.5 }),
        load(3, { test: 'b' }),
        load(4),
      ]),
    );
    expect(tests.map((t) => t.readings.length)).toEqual([2, 1, 1]);
  });

  it('follows a correction of the weight: what was expected goes with it', () => {
    const [test] = proofTests(buildOf([load(1, { mass: 12 })]));
    expect(test?.readings[0]?.expected).toBeCloseTo(0.0216, 9);
  });

  it('is nothing where nothing was expected, or it moved the other way', () => {
    for (const more of [{ expectedEach: undefined }, { deflection: -0.02 }]) {
      const [test] = proofTests(buildOf([load(1, more)]));
      expect(test && stiffnessOf(test)).toBeUndefined();
    }
  });

  it('calls a set what stayed, and not what a dial slips', () => {
    const [sound] = proofTests(buildOf([load(1, { set: 0.0003 })]));
    const [gave] = proofTests(buildOf([load(1, { set: 0.0009 })]));
    expect(sound && [setOf(sound), isSet(sound)]).toEqual([0.0003, false]);
    expect(gave && isSet(gave)).toBe(true);
    const [unread] = proofTests(buildOf([load(1)]));
    expect(unread && setOf(unread)).toBeUndefined();
  });
});

describe('a tube that gives way', () => {
  const under = withReading(withReading(begun('first', clamp), 'before', 0.003, '3'), 'under', 0.02, '20');

  it('is written down with what hung, where it hung, and where it gave', () => {
    const gave = { how: 'broke', place: { si: 0.25, typed: '250 mm' } } as const;
    expect(gaveWayDraft('build-1', under, gave)).toMatchObject({
      kind: 'gaveWay',
      how: 'broke',
      mass: 5,
      at: 2,
      place: 0.25,
      test: 'first',
    });
    expect(gaveWayDraft('build-1', under, { how: 'crackled' })).not.toHaveProperty('place');
  });

  it('stands in its summary, by which the next tube of the plan is warned', () => {
    const events: Event[] = [{ minute: 1, kind: 'gaveWay', how: 'dented', mass: 12, at: 2, place: 0.3 }];
    expect(isTested(buildOf(events))).toBe(true);
    const entries = entriesOf(buildHeader.id, events);
    expect(summarize(buildHeader, entries)).toMatchObject({
      gaveWay: [{ how: 'dented', mass: 12, at: 2, place: 0.3 }],
    });
    expect(summarize(buildHeader, [])).not.toHaveProperty('gaveWay');
  });
});

describe('a squeeze', () => {
  const thin = wallSection({
    innerDiameter: 0.038,
    plies: [{ e1: 69e9, e2: 69e9, g12: 26e9, nu12: 0.327, angle: 0, thickness: 0.0006 }],
  });
  const tapered = {
    tube: { length: 2, stations: [section, thin].map((s, i) => ({ at: 2 * i, section: s })) },
  };

  it('is set at the softer end', () => {
    expect(thinEnd({ ...tapered, design: undefined, counted: 1 }, 2)).toBeCloseTo(1.98, 9);
    expect(thinEnd({ tube: undefined, design: undefined, counted: 1 }, 2)).toBeCloseTo(0.02, 9);
  });

  it('shows the ring stiffness it expected when it gives what was expected', () => {
    const squeezing = { station: 2, length: 0.02, force: { si: 20, typed: '20 N' } };
    const narrower = expectedNarrower(thin, squeezing, 20);
    const entry = { kind: 'squeezeTest', station: 2, force: 20, length: 0.02, narrower } as const;
    const [test] = buildOf([{ minute: 1, ...entry, expected: thin.ringStiffness }]).squeezeTests;
    expect(test && ringOf(test.entry).factor).toBeCloseTo(1, 9);
    expect(whyNot(thin, squeezing, narrower)).toBeUndefined();
    expect(whyNot(thin, squeezing, 0.005)).toContain('tenth of the diameter');
  });
});
