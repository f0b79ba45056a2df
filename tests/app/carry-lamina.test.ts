import { beforeEach, describe, expect, test } from 'vitest';
import { laminaOf } from '#app/planning/carry/cloth-material.ts';
import { settings } from '#app/state/settings.ts';
import {
  clothWith,
  isAllEmpty,
  isGoodLamina,
  type LaminaDraft,
  laminaDraft,
  takeOver,
} from '#app/stock/shelf/lamina-draft.ts';
import type { LaminaKey } from '#app/stock/shelf/lamina-fields.ts';
import { clothBody } from '#shared/record/cloth.ts';
import { starterCloths } from '#shared/reference/starter-cloths.ts';
import { handbookLaminas } from '#shared/reference/strengths.ts';

const woven = starterCloths['starter-cloth-carbon-plain-193'];
const oneWay = starterCloths['starter-cloth-carbon-unidirectional-150'];

const write = (draft: LaminaDraft, texts: Partial<Record<LaminaKey, string>>) => {
  for (const [key, text] of Object.entries(texts)) {
    const input = draft.inputs.get(key as LaminaKey);
    if (input) input.text.value = text;
  }
};

const problems = (draft: LaminaDraft) =>
  Object.fromEntries(
    [...draft.inputs].flatMap(([key, { problem }]) => (problem.value ? [[key, problem.value]] : [])),
  );

const stiffness = { fiberVolumeFraction: '60 %', e1: '140', e2: '9', g12: '4.5', nu12: '0.3' };
const strengths = {
  alongTension: '1500',
  alongCompression: '1200',
  acrossTension: '40',
  acrossCompression: '200',
  shear: '70',
};

beforeEach(() => {
  settings.value = { ...settings.value, units: 'metric' };
});

describe('stiffness and strength of a cloth', () => {
  test('are asked of woven cloth with what its waves leave, of fibers one way without', () => {
    expect(laminaDraft(woven).keys).toContain('crimp');
    expect(laminaDraft(oneWay).keys).not.toContain('crimp');
  });

  test('may all stay empty: then the handbook holds', () => {
    const draft = laminaDraft(woven);
    expect(isAllEmpty(draft) && isGoodLamina(draft)).toBe(true);
    expect(clothWith(draft, woven).lamina).toBeUndefined();
    expect(laminaOf(woven)).toMatchObject({ from: 'handbook' });
  });

  test('are kept in Pa whatever they were typed in', () => {
    const draft = laminaDraft(oneWay);
    write(draft, { ...stiffness, e1: '20.3 Msi', ...strengths, shear: '10 ksi' });
    expect(problems(draft)).toEqual({});
    const cloth = clothWith(draft, oneWay);
    // 1 Msi is 6.894757 GPa (NIST SP 811)
    expect((cloth.lamina?.e1 ?? 0) / 1e9).toBeCloseTo(20.3 * 6.894757, 4);
    expect((cloth.lamina?.strengths?.shear ?? 0) / 1e6).toBeCloseTo(68.94757, 3);
    expect(clothBody.safeParse(cloth).success).toBe(true);
    expect(laminaOf(cloth)?.from).toBe('own');
  });

  test('of stiffness alone are enough', () => {
    const draft = laminaDraft(oneWay);
    write(draft, stiffness);
    expect(problems(draft)).toEqual({});
    expect(clothWith(draft, oneWay).lamina?.strengths).toBeUndefined();
  });

  test('are whole or not at all, a sentence at each that is missing', () => {
    const draft = laminaDraft(oneWay);
    write(draft, { e1: '140', e2: '9' });
    expect(Object.keys(problems(draft))).toEqual(['fiberVolumeFraction', 'g12', 'nu12']);
    expect(isGoodLamina(draft)).toBe(false);
    write(draft, { ...stiffness, shear: '70' });
    expect(Object.keys(problems(draft))).toEqual([
      'alongTension',
      'alongCompression',
      'acrossTension',
      'acrossCompression',
    ]);
    write(draft, { fiberVolumeFraction: '', e1: '', e2: '', g12: '', nu12: '', ...strengths });
    expect(problems(draft).e1).toMatch(/Write this too/);
  });

  test('cannot be zero', () => {
    const draft = laminaDraft(oneWay);
    write(draft, { ...stiffness, e2: '0', g12: '0' });
    expect(problems(draft)).toEqual({
      e2: expect.stringMatching(/^Zero will not do here/),
      g12: expect.stringMatching(/^Zero will not do here/),
    });
  });

  test("keep Poisson's ratio below the root of E1 over E2, waves and all", () => {
    const draft = laminaDraft(woven);
    // sqrt(9/140) = 0.2535, by hand
    write(draft, { ...stiffness, e1: '9', e2: '140', nu12: '0.26' });
    expect(problems(draft).nu12).toMatch(/below 0\.253/);
    write(draft, { nu12: '-0.26' });
    expect(problems(draft).nu12).toMatch(/below 0\.253/);
    write(draft, { nu12: '0.25' });
    expect(problems(draft)).toEqual({});
    write(draft, { crimp: '90 %' });
    expect(problems(draft).nu12).toMatch(/below 0\.240/);
  });

  test('no stiffer than the resin in them are a slip of the unit', () => {
    const draft = laminaDraft(oneWay);
    write(draft, { ...stiffness, e1: '1.1', e2: '1' });
    expect(problems(draft).e1).toMatch(/epoxy/);
  });

  test("taken over from the handbook are the handbook's still, until one is changed", () => {
    const draft = laminaDraft(oneWay);
    takeOver(draft, handbookLaminas.carbon);
    const cloth = clothWith(draft, oneWay);
    expect(cloth.lamina).toEqual(handbookLaminas.carbon);
    expect(laminaOf(cloth)?.from).toBe('handbook');
    write(draft, { e1: '150' });
    expect(laminaOf(clothWith(draft, oneWay))?.from).toBe('own');
  });

  test('come back as they were, and nothing that this version does not know is lost', () => {
    const kept = { ...handbookLaminas.carbon, crimp: 0.95, heardFrom: 'a data sheet' };
    const cloth = { ...woven, lamina: kept };
    expect(clothWith(laminaDraft(cloth), cloth)).toEqual(cloth);
  });
});
