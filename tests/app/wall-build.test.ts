import { describe, expect, test } from 'vitest';
import { planOf } from '#app/laying-up/mix/mix-of-build.ts';
import { curedByWeight } from '#app/made/results/by-weight.ts';
import { wallCloth } from '#app/planning/wall/wall-mix.ts';
import { summarize } from '#app/state/summarize.ts';
import { buildHeader } from '../record/arbitraries.ts';
import { buildOf, entriesOf } from './shop-of.ts';
import { aramid, pieceOf, shape, shelf, wallOf } from './wall-of.ts';

const even = shape([
  [0, 1],
  [2.4, 1],
]);

describe('a build of a wall with a core', () => {
  const core = { coreMass: 0.08, coreResin: 0.12 };
  const cured = { kind: 'weight', what: 'cured', mass: 0.6, minute: 300 } as const;

  test('mixes what the faces of its core drink besides what the cloth keeps', () => {
    const [without, with_] = [buildOf([]), buildOf([], core)].map((state) => planOf(state));
    if (!without?.ok || !with_?.ok) throw new Error('nothing to mix');
    expect(with_.plan.kept - without.plan.kept).toBeCloseTo(0.12, 12);
    expect(with_.plan.total).toBeGreaterThan(without.plan.total + 0.12);
  });

  test('is judged by its cloth and the resin of that, without core and core resin', () => {
    const plain = curedByWeight(buildOf([{ ...cured, mass: 0.4 }], { clothMass: 0.18 }));
    const sandwich = curedByWeight(buildOf([cured], { clothMass: 0.18, ...core }));
    if (!plain.ok || !sandwich.ok) throw new Error('not weighed');
    expect(sandwich.value.fiberVolume).toBeCloseTo(plain.value.fiberVolume, 12);
    expect(sandwich.value.resin).toBeCloseTo(0.22, 12);
    expect(sandwich.value.tube).toBe(0.6);
  });

  test('lighter than cloth and core together is a slip', () => {
    const light = curedByWeight(buildOf([{ ...cured, mass: 0.3 }], { clothMass: 0.18, ...core }));
    expect(light).toEqual({ ok: false, why: 'lighterThanCloth' });
  });

  test('keeps its core in the summary, so that the list says the same', () => {
    const header = { ...buildHeader, ...core };
    expect(summarize(header, entriesOf(header.id, [cured]))).toMatchObject({ core: 0.2 });
  });
});

test('what a wall freezes into a build is one cloth for all, and the core by itself', () => {
  const plan = wallOf([
    pieceOf(even),
    pieceOf(even, { kind: 'core', material: 'starter-core-pvc-3' }),
    pieceOf(even, { material: aramid }),
  ]);
  const made = wallCloth(plan, shelf);
  expect(made?.cloth.name).toMatch(/ \+ /);
  expect(made?.coreMass).toBeGreaterThan(0.03);
  expect(made?.coreResin).toBeGreaterThan(made?.coreMass ?? 1);
  expect(wallCloth(wallOf([pieceOf(even)]), shelf)).not.toHaveProperty('coreMass');
});

test('a wall that cannot be rolled freezes nothing of its own', () => {
  expect(wallCloth(wallOf([pieceOf(even, { material: 'gone' })]), shelf)).toBeUndefined();
});
