import type { LoadPlan } from '#shared/record/load-plan.ts';

/** Invented, as the canoe is: what a gust puts on the lower mast, stepped on the keel and held by the deck. */
export const lowerMastLoads: LoadPlan = {
  supports: [
    { id: 'demo-step', holds: 'rests', at: 0.03, holdsTwist: true, holdsAxial: true },
    { id: 'demo-partners', holds: 'rests', at: 0.55 },
  ],
  cases: [
    {
      id: 'demo-gust',
      name: 'Reaching in a gust',
      loads: [
        { id: 'demo-sail', kind: 'spread', from: 0.75, to: 2.1, atFrom: 80, atTo: 65 },
        { id: 'demo-upper', kind: 'point', at: 2.1, force: 95 },
        { id: 'demo-halyard', kind: 'axial', at: 2.1, force: -250 },
      ],
      loadFactor: 1.5,
    },
  ],
  safetyFactor: 2,
  mostDeflection: 0.12,
  note: 'Sail load from the crew’s weight on the seat: more than that, and she lies over.',
};
