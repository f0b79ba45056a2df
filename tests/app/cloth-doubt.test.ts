import { afterEach, describe, expect, it, vi } from 'vitest';

const cloth = { body: { name: 'Carbon', fiber: 'carbon', fiberDensity: 1780, arealWeight: 0.2 } };
const resin = { body: { curedDensity: 1150 } };
vi.mock('#app/state/documents.ts', () => ({
  docsOf: () => [],
  findDoc: (type: string) => (type === 'cloth' ? cloth : type === 'resin' ? resin : undefined),
}));
vi.mock('#app/planning/making/last-made.ts', () => ({ likely: () => 'x' }));
vi.mock('#app/state/shop.ts', () => ({ theStore: () => ({}) }));

const { makingDraft } = await import('#app/planning/making/draft.ts');
const { clothDoubt, clothForPlies } = await import('#app/planning/making/cloth-doubt.ts');

function draftOf(mass: string, sizes: { mandrel?: string; length?: string; plies?: string } = {}) {
  const draft = makingDraft();
  draft.clothMass.text.value = mass;
  draft.mandrelDiameter.text.value = sizes.mandrel ?? '';
  draft.tubeLength.text.value = sizes.length ?? '';
  draft.plies.text.value = sizes.plies ?? '';
  return draft;
}
const sizes = { mandrel: '38 mm', length: '1500 mm', plies: '6' };

describe('the doubt about the cloth on the scale', () => {
  afterEach(() => vi.clearAllMocks());

  it('knows the cloth that the plies take: round the tube, along it, times its weight', () => {
    // Six plies of 0.32 mm on 38 mm: pi 6 (38 + 6 x 0.321) = 752.6 mm wide, by hand.
    expect(clothForPlies(draftOf('225 g', sizes))).toBeCloseTo(0.7526 * 1.5 * 0.2, 3);
  });

  it('lets a shaped wall pass', () => {
    expect(clothDoubt(draftOf('225 g', sizes), 3)).toBeUndefined();
    expect(clothDoubt(draftOf('140 g', sizes), 2)).toBeUndefined();
  });

  it('asks when the point is a place off', () => {
    expect(clothDoubt(draftOf('2250 g', sizes), 20)).toMatch(/take about 226.g, not 2250.0.g/);
    expect(clothDoubt(draftOf('22.5 g', sizes), 1)).toMatch(/take about/);
  });

  it('without sizes goes by the cups it would take', () => {
    expect(clothDoubt(draftOf('1161 g'), 12)).toMatch(/12 cups/);
    expect(clothDoubt(draftOf('116.1 g'), 2)).toBeUndefined();
  });

  it('is silent while nothing is typed', () => {
    expect(clothDoubt(draftOf('', sizes), undefined)).toBeUndefined();
  });
});
