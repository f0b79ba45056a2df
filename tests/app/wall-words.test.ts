import { describe, expect, test } from 'vitest';
import { extraOf, seamWords } from '#app/planning/wall/seam-words.ts';
import { driftOf, openAt, splitAngle, wallCautions } from '#app/planning/wall/wall-cautions.ts';
import { flatPieces, rollOf, type WalledPlan } from '#app/planning/wall/wall-model.ts';
import { wallProblem } from '#app/planning/wall/wall-words.ts';
import type { Piece, ShapeRecord } from '#shared/record/piece.ts';
import { lowerMastPlies, pieceOf, shape, shelf, wallOf } from './wall-of.ts';

/** What the wall says when it cannot be rolled. */
function problemOf(plan: WalledPlan) {
  try {
    flatPieces(rollOf(plan, shelf));
  } catch (error) {
    if (error instanceof RangeError) return wallProblem(error, plan.wall);
    throw error;
  }
  return undefined;
}

const named = (plies: ShapeRecord, change: Partial<Piece> = {}) =>
  pieceOf(plies, { name: 'Skin', ...change });
const from0 = (...pairs: (readonly [number, number])[]) => shape(pairs);
const onMandrel = (mandrel: ShapeRecord, pieces: Piece[], tubeLength = 2.4): WalledPlan => {
  const plan = wallOf(pieces, { tubeLength });
  return { ...plan, wall: { ...plan.wall, mandrel } };
};
const even = from0([0, 2], [2.4, 2]);

describe('a wall that cannot be rolled says in one sentence why, and where', () => {
  const cases: [string, WalledPlan, RegExp, object][] = [
    [
      'stations out of order',
      wallOf([named(from0([0, 3], [1, 4], [0.5, 3], [2.4, 2]))]),
      /^The stations of Skin are out of order/,
      { piece: 0 },
    ],
    [
      'stations on top of each other',
      wallOf([named(from0([0, 3], [1, 4], [1, 3], [2.4, 2]))]),
      /^Two stations of Skin lie on top of each other/,
      { piece: 0 },
    ],
    [
      'no plies',
      wallOf([named(from0([0, 3], [2.4, 0]))]),
      /^Skin has a station with nothing there/,
      { piece: 0, station: 1 },
    ],
    [
      'a width below its lap',
      wallOf([named(even, { overlap: 0.02, shape: { by: 'width', width: from0([0, 0.3], [2.4, 0.01]) } })]),
      /^Skin is no wider than its lap/,
      { piece: 0 },
    ],
    [
      'a smooth curve through a step',
      wallOf([named({ ...from0([0, 3], [1, 3], [1.0005, 5], [2.4, 5]), between: 'smooth' })]),
      /^Skin steps where it should be smooth/,
      { piece: 0 },
    ],
    [
      'a piece longer than the tube',
      wallOf([named(from0([0, 3], [2.5, 3]))]),
      /^Skin reaches 2500\smm and the tube ends at 2400\smm/,
      { piece: 0 },
    ],
    [
      'a tube longer than the mandrel',
      onMandrel(from0([0, 0.05], [2, 0.05]), [named(even)]),
      /^The mandrel ends at 2000\smm, before the tube does/,
      { mandrel: true },
    ],
    [
      'a mandrel that begins late',
      onMandrel(from0([0.1, 0.05], [3, 0.05]), [named(even)]),
      /^The mandrel begins after end 0/,
      { mandrel: true },
    ],
    [
      'diameters out of order',
      onMandrel(from0([0, 0.05], [3, 0.05], [2, 0.04]), [named(even)]),
      /^The diameters of the mandrel are out of order/,
      { mandrel: true },
    ],
    [
      'a bend under the cloth',
      onMandrel(from0([0, 0.05], [1.2, 0.05], [2.4, 0.02]), [named(even)]),
      /^Skin lies over a bend of the mandrel at 1200\smm/,
      { piece: 0 },
    ],
    [
      'a wall that does not fit the taper',
      onMandrel(from0([0, 0.4], [0.3, 0.02]), [named(from0([0, 3], [0.3, 3]))], 0.3),
      /^Skin does not fit the taper of the mandrel/,
      { piece: 0 },
    ],
    [
      'a material that is gone',
      wallOf([named(even, { material: 'gone' })]),
      /^The material of Skin is not on the shelf any more/,
      { piece: 0 },
    ],
  ];
  test.each(cases)('%s', (_, plan, says, where) => {
    const problem = problemOf(plan);
    expect(problem?.says).toMatch(says);
    expect(problem).toMatchObject(where);
    // One sentence for people: no field names, no SI.
    expect(problem?.says).not.toMatch(/pieces\[|stations\[|undefined|NaN| m\b/);
  });

  test('200 stations, a tube of 0.1 m and one of 12 m are no problem', () => {
    const many = from0(...Array.from({ length: 200 }, (_, i) => [(i * 2.4) / 199, 3 + (i % 4)] as const));
    expect(problemOf(wallOf([named(many)]))).toBeUndefined();
    const short = onMandrel(from0([0, 0.01], [0.1, 0.01]), [named(from0([0, 2], [0.1, 2]))], 0.1);
    expect(problemOf(short)).toBeUndefined();
    const long = onMandrel(from0([0, 0.1], [12, 0.1]), [named(from0([0, 8], [12, 2]))], 12);
    expect(problemOf(long)).toBeUndefined();
  });
});

const titles = (plan: WalledPlan) => wallCautions(plan, rollOf(plan, shelf)).map((c) => c.title);

describe('cautions of a wall', () => {
  test('a tube that is open says where, and that it stops', () => {
    const plan = wallOf([named(from0([0.5, 2], [2.4, 2]))]);
    const cautions = wallCautions(plan, rollOf(plan, shelf));
    expect(cautions[0]).toMatchObject({
      title: expect.stringMatching(/^The tube is open at 0/),
      stops: true,
    });
    expect(openAt(rollOf(wallOf([named(even)]), shelf))).toBeUndefined();
  });

  test('less than one ply is open, also where a second piece only covers part of the rest', () => {
    const thin = from0([0, 0.6], [2.4, 0.6]);
    expect(openAt(rollOf(wallOf([named(thin), named(thin)]), shelf))).toBe(0);
    const closes = named(thin, { clock: Math.PI });
    expect(openAt(rollOf(wallOf([named(thin), closes]), shelf))).toBeUndefined();
  });

  test('one wrap without a lap only butts; 12 mm of lap is enough', () => {
    const once = from0([0, 1], [2.4, 1]);
    expect(titles(wallOf([named(once)]))).toEqual([expect.stringMatching(/^Skin only butts at 0/)]);
    expect(titles(wallOf([named(once, { overlap: 0.012 })]))).toEqual([]);
    expect(titles(wallOf([named(even)]))).toEqual([]);
  });

  test('edges of two pieces on one line are told once for the two', () => {
    const plan = wallOf([named(even), named(even)]);
    expect(titles(plan).filter((t) => t.startsWith('Edges'))).toHaveLength(1);
    expect(titles(wallOf([named(even), named(even, { clock: Math.PI / 2 })]))).toEqual([]);
  });

  test('a sleeve that ends all at once gets a word, a long taper none', () => {
    const sleeve = named(from0([0, 3], [0.5, 3]), { clock: Math.PI / 2 });
    expect(titles(wallOf([named(even), sleeve]))).toEqual([
      expect.stringMatching(/^The wall drops fast at 500/),
    ]);
    expect(titles(wallOf([named(lowerMastPlies)]))).toEqual([]);
  });
});

describe('fiber on a tapered mandrel', () => {
  const plan = onMandrel(from0([0, 0.04], [2, 0.03]), [named(from0([0, 4], [2, 4]))], 2);

  test('drifts by 360 N sin(half-angle) degrees, split about mid-piece', () => {
    const drift = driftOf(rollOf(plan, shelf), 0);
    const total = 2 * Math.PI * 4 * Math.sin(Math.atan(0.005 / 2));
    expect(drift?.total).toBeCloseTo(total, 9);
    expect(drift && splitAngle(0, drift)).toBeCloseTo(-total / 2, 9);
  });

  test('does not drift on a straight one', () => {
    expect(driftOf(rollOf(wallOf([named(even)]), shelf), 0)).toBeUndefined();
  });
});

describe('where the extra ply and the seam lie', () => {
  test('an extra ply over the top is one stretch', () => {
    const steps = [
      { from: 0, to: 1, plies: 4 },
      { from: 1, to: 5, plies: 3 },
      { from: 5, to: 2 * Math.PI, plies: 4 },
    ];
    expect(extraOf(steps)).toEqual([{ from: 5, to: 2 * Math.PI + 1 }]);
  });

  const quarter = named(from0([0, 3.25], [2.4, 3.25]));
  const saysOf = (piece: Piece, pressedAt: number) =>
    seamWords(rollOf(wallOf([piece]), shelf), [piece], 1.2, pressedAt);

  test('on the pressed side it is good, across from it it is to be turned', () => {
    const middle = Math.PI / 4;
    expect(saysOf(quarter, middle)).toEqual([expect.objectContaining({ good: true })]);
    const [across] = saysOf(quarter, middle + Math.PI);
    expect(across?.good).toBe(false);
    expect(across?.says).toMatch(/180°/);
  });

  test('a single lap on the neutral axis is told, and one off it is good', () => {
    const lap = named(from0([0, 1], [2.4, 1]), { overlap: 0.015 });
    const joint = (pressedAt: number) => saysOf(lap, pressedAt).find((w) => w.says.includes('seam'));
    // The lap reaches from 0° to 34°.
    expect(joint(Math.PI / 2 + 0.3)?.good).toBe(false);
    expect(joint(0.3)?.good).toBe(true);
  });
});
