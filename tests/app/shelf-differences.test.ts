import { describe, expect, test } from 'vitest';
import { differences } from '#app/stock/shelf/differences.ts';

const cloth = {
  name: 'Plain 193',
  fiber: 'carbon',
  arealWeight: 0.193,
  fiberDensity: 1800,
  lamina: { fiberVolumeFraction: 0.7, e1: 181e9, strengths: { shear: 68e6 } },
};

describe('what two phones changed of a thing on the shelf', () => {
  test('is told by the names of its fields, with what each version says', () => {
    const other = { ...cloth, fiber: 'glass', arealWeight: 0.2 };
    expect(differences('cloth', [cloth, other])).toEqual([
      ['Fiber', 'Carbon', 'Glass'],
      ['Weight of the cloth', '193 g/m²', '200 g/m²'].map((s) =>
        expect.stringMatching(s.replace(' ', '\\s')),
      ),
    ]);
  });

  test('reaches into stiffness and strength', () => {
    const { lamina, ...without } = cloth;
    const stronger = { ...cloth, lamina: { ...lamina, strengths: { shear: 75e6 } } };
    expect(differences('cloth', [cloth, stronger]).map(([label]) => label)).toEqual(['In shear']);
    expect(differences('cloth', [cloth, without]).map(([label, , other]) => [label, other])).toEqual(
      ['Fiber volume of the sheet', 'Along the fibers, E1', 'In shear'].map((label) => [label, '–']),
    );
  });

  test('of the same is nothing', () => {
    expect(differences('cloth', [cloth, { ...cloth }])).toEqual([]);
  });
});
