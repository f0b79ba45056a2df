import { describe, expect, test } from 'vitest';
import { recipe } from '#app/laying-up/mix/recipe.ts';
import { blendedCloth } from '#app/planning/wall/blend.ts';
import { clothMasses } from '#app/planning/wall/plan-with-wall.ts';
import { wallRecipe } from '#app/planning/wall/wall-mix.ts';
import { flatPieces, masses, pieceSpecs, plyThickness, rollOf } from '#app/planning/wall/wall-model.ts';
import { resinForCloth } from '#calc';
import { aramid, carbon, lowerMastPlies, pieceOf, shape, shelf, wallOf, withFollowing } from './wall-of.ts';

const cloth = shelf.cloth(carbon);
if (!cloth) throw new Error('no carbon on the shelf');

const even = (plies: number) =>
  shape([
    [0, plies],
    [2.4, plies],
  ]);

/** Carbon, foam, carbon and aramid. */
const sandwich = () =>
  wallOf([
    pieceOf(even(1)),
    pieceOf(even(1), { kind: 'core', material: 'starter-core-pvc-3' }),
    pieceOf(even(2)),
    pieceOf(even(1), { material: aramid }),
  ]);

describe('what a piece is rolled from', () => {
  test('a ply is as thick as cloth and fiber volume make it: w/(rho Vf)', () => {
    const [spec] = pieceSpecs(wallOf([pieceOf(lowerMastPlies)]), shelf);
    expect(spec?.thickness).toBeCloseTo(0.193 / 1790 / 0.35, 12);
  });

  test("the shop's own ply thickness goes before it", () => {
    const [spec] = pieceSpecs(wallOf([pieceOf(lowerMastPlies, { thickness: 0.00027 })]), shelf);
    expect(spec?.thickness).toBe(0.00027);
  });

  test('release on the mandrel counts for the first ply', () => {
    const plan = wallOf([pieceOf(lowerMastPlies)], { release: 'starter-release-polyester-sleeve' });
    expect(rollOf(plan, shelf).diameter[0]).toBeCloseTo(0.0509, 12);
  });

  test('a cloth that is gone is named, not guessed', () => {
    const gone = wallOf([pieceOf(lowerMastPlies, { material: 'gone' })]);
    expect(() => rollOf(gone, shelf)).toThrow(/pieces\[0\]\.material/);
  });

  test('film weighs as polyester where nothing is said', () => {
    const film = pieceOf(even(1), { kind: 'film' });
    const plan = wallOf([pieceOf(even(2)), film]);
    const mass = masses(plan, rollOf(plan, shelf), shelf);
    // pi (D + 2 x 2 t + t) x length x thickness x density, by hand
    const t = plyThickness(cloth, 0.35);
    const area = Math.PI * (0.0508 + 4 * t + 0.00005) * 2.4;
    expect(mass?.film).toBeCloseTo(area * 0.00005 * 1390, 6);
  });
});

describe('the lower mast', () => {
  const plan = wallOf([pieceOf(lowerMastPlies)]);
  const t = 0.193 / 1790 / 0.35;

  test('is cut as wide as w = pi n (D + n t) says at its stations', () => {
    const [flat] = flatPieces(rollOf(plan, shelf));
    const widths = flat?.marks.map((m) => m.edge.y);
    const wanted = [3, 3, 6, 6, 3, 2].map((n) => Math.PI * n * (0.0508 + n * t));
    wanted.forEach((w, i) => {
      expect(widths?.[i]).toBeCloseTo(w, 9);
    });
  });

  test('gives the plan its cloth, plies and mandrel', () => {
    const followed = withFollowing(plan);
    const mass = masses(plan, rollOf(plan, shelf), shelf);
    expect(followed.plies).toBe(6);
    expect(followed.mandrelDiameter).toBeCloseTo(0.0508, 12);
    expect(followed.clothAmount).toEqual({ by: 'mass', mass: mass?.cloth });
    expect(followed.cloth).toBe(carbon);
  });

  test('is rolled once for one wall and one shelf, and anew for another fiber volume', () => {
    expect(rollOf(plan, shelf)).toBe(rollOf({ ...plan, note: 'words do not matter' }, shelf));
    const leaner = { ...plan, goal: { ...plan.goal, fiberVolumeFraction: 0.45 } };
    expect(rollOf(leaner, shelf)).not.toBe(rollOf(plan, shelf));
  });
});

describe('a sandwich', () => {
  test('keeps resin for each cloth and for both faces of its core', () => {
    const plan = sandwich();
    const mass = masses(plan, rollOf(plan, shelf), shelf);
    const core = mass?.pieces[1];
    const face = shelf.core('starter-core-pvc-3')?.faceResin ?? Number.NaN;
    expect(core?.resin).toBeCloseTo((core?.area ?? 0) * 2 * face, 9);
    const kept = mass?.pieces.reduce((sum, p) => sum + p.resin, 0);
    expect(mass?.resin).toBeCloseTo(kept ?? Number.NaN, 12);
    expect(wallRecipe(plan, rollOf(plan, shelf), shelf)?.kept).toBeCloseTo(kept ?? Number.NaN, 9);
  });

  test('names as its cloth the one there is most of', () => {
    expect(withFollowing(sandwich()).cloth).toBe(carbon);
    const plan = sandwich();
    const mass = masses(plan, rollOf(plan, shelf), shelf);
    if (!mass) throw new Error('no resin on the shelf');
    expect([...clothMasses(plan, mass).keys()]).toEqual([carbon, aramid]);
  });
});

describe('a blend of cloths', () => {
  const other = shelf.cloth(aramid);
  if (!other) throw new Error('no aramid on the shelf');
  const blend = blendedCloth([
    { cloth: other, mass: 0.05 },
    { cloth, mass: 0.2 },
  ]);

  test('takes the resin of both together', () => {
    const resin = shelf.resin('starter-resin-laminating-slow');
    if (!blend || !resin) throw new Error('nothing blended');
    const { goal } = wallOf([]);
    const alone = (of: typeof cloth, clothMass: number) => recipe({ cloth: of, clothMass, resin, goal }).kept;
    const both = recipe({ cloth: blend, clothMass: 0.25, resin, goal }).kept;
    expect(both).toBeCloseTo(alone(cloth, 0.2) + alone(other, 0.05), 12);
    expect(both).not.toBeCloseTo(resinForCloth({ clothMass: 0.25, resinMassFraction: 0.5 }), 3);
  });

  test('is named by what there is most of first, and weighs its area in the mean', () => {
    expect(blend?.name).toBe(`${cloth.name} + ${other.name}`);
    expect(blend?.fiber).toBe('other');
    expect(0.25 / (blend?.arealWeight ?? 0)).toBeCloseTo(
      0.2 / cloth.arealWeight + 0.05 / other.arealWeight,
      9,
    );
  });

  test('of one cloth is that cloth, and of none is none', () => {
    expect(
      blendedCloth([
        { cloth, mass: 0.2 },
        { cloth: other, mass: 0 },
      ]),
    ).toBe(cloth);
    expect(blendedCloth([])).toBeUndefined();
  });
});
