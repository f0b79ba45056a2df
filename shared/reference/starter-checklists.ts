import type { Checklist } from '#shared/record/checklist.ts';
import { minutes } from './quantities.ts';
import { bondPrep, cure, demold, measure, postcure, trim, weigh } from './starter-stages-cure.ts';
import { cut, mandrelPrep, setUp } from './starter-stages-dry.ts';
import { filmSleeve, semiPermanent, waxAndPva } from './starter-stages-release.ts';
import { mix, shrinkTape, wetOut, wrap } from './starter-stages-wet.ts';
import { step } from './starter-step.ts';

const note =
  'A route to start from. Change it to how your shop works: a build keeps the one it started with.';

const layUp = () => [cut(), setUp(), mix(), wetOut(), wrap(), shrinkTape()];

const filmPulled = step('demold-film', 'Release film pulled out, nothing left', {
  hint: 'Look through the bore. What tears stays in the tube as weight.',
});
const filmWeighed = step('weigh-film', 'Film that came out weighed', { role: 'weighFilmOut' });
const pvaWashed = step('demold-washed', 'PVA washed out with water');
const boreDry = step('demold-dried', 'Stood on end to dry', {
  waits: minutes(60),
  hint: 'Water in the bore would count as resin.',
});
const boreLooked = step('demold-bore', 'Bore looked through, clean');

export const starterChecklists = {
  'starter-checklist-film-sleeve': {
    name: 'Tube on a film sleeve',
    stages: [
      mandrelPrep(),
      filmSleeve(),
      ...layUp(),
      cure('Polyester film gets brittle above 82 °C (180 °F) on the part.'),
      demold([filmPulled]),
      weigh([filmWeighed]),
      trim(),
      measure(),
    ],
    typical: true,
    note,
  },
  'starter-checklist-wax-pva': {
    name: 'Tube on wax and PVA',
    stages: [
      mandrelPrep(),
      waxAndPva(),
      ...layUp(),
      cure('The PVA coat bears about 80 °C (176 °F) on the part.'),
      demold([pvaWashed, boreDry]),
      weigh(),
      trim(),
      measure(),
    ],
    typical: true,
    note,
  },
  'starter-checklist-semi-permanent': {
    name: 'Tube on semi-permanent release, with bonding',
    stages: [
      mandrelPrep(),
      semiPermanent(),
      ...layUp(),
      cure(),
      demold([boreLooked]),
      weigh(),
      trim(),
      measure(),
      postcure(),
      bondPrep(),
    ],
    typical: true,
    note,
  },
} as const satisfies Record<string, Checklist>;
