import * as picture from './pictures/load.tsx';
import type { Term } from './term.ts';

export const loadTerms: readonly Term[] = [
  {
    id: 'load-factor',
    name: 'Load factor',
    also: 'dynamic factor, gust factor',
    says: 'How many times as hard the loads you wrote down may come: a gust, a slam, a jump. It is yours to say, and 1 means no more than what is written. It is about the loads; the safety factor is about the tube.',
    Picture: picture.LoadFactor,
  },
  {
    id: 'safety-factor',
    name: 'Safety factor',
    also: 'factor of safety, reserve',
    says: 'How many times the greatest load the tube must bear before it gives out. It makes up for what no reckoning knows: scatter of hand layup, damage, heat, age. It is yours to say, and never below 1.',
    Picture: picture.SafetyFactor,
  },
  {
    id: 'margin',
    name: 'Margin',
    also: 'margin of safety, reserve',
    says: 'What is left after the safety factor. At 0 the tube bears just what you ask of it. At +0.5 the loads may grow by half more. Below 0 it does not hold.',
    Picture: picture.Margin,
  },
  {
    id: 'shear',
    name: 'Shear',
    also: 'shear force, transverse force',
    says: 'The force that wants to slide one part of the tube past the next, square to its length. It is the same all the way between two forces. Threads at 45° carry it.',
    Picture: picture.Shear,
  },
  {
    id: 'moment',
    name: 'Moment',
    also: 'bending moment, lever',
    says: 'How hard the tube is bent at a place: force times its lever. It pulls one side long and presses the other short. Threads along the tube carry it.',
    Picture: picture.Moment,
  },
  {
    id: 'torque',
    name: 'Torque',
    also: 'twist, torsion',
    says: 'A force that turns the tube about its own length. The wall carries it as shear all round. Threads at 45° carry it.',
    Picture: picture.Torque,
  },
  {
    id: 'wall-buckling',
    name: 'Wall buckling',
    also: 'crippling, local buckling, wrinkling',
    says: 'A thin wall that is pressed or twisted folds into a wrinkle long before its fibers break. A thicker wall, or a smaller diameter, stops it. The shorter the free length between what keeps it round, the more twist it bears.',
    Picture: picture.WallBuckling,
  },
  {
    id: 'ovalization',
    name: 'Ovalization',
    also: 'flattening, Brazier',
    says: 'A tube that is bent hard goes flat across, gets weaker by it, and then kinks all at once. Plies round the tube keep it round.',
    Picture: picture.Ovalization,
  },
];
