import * as picture from './pictures/stiffness.tsx';
import type { Term } from './term.ts';

export const stiffnessTerms: readonly Term[] = [
  {
    id: 'lamina',
    name: 'One ply, fibers one way',
    also: 'lamina, E1, E2, G12, Poisson, modulus, unidirectional',
    says: 'Data sheets tell stiffness and strength of a ply whose fibers all run one way. 1 is along them, 2 across. A woven cloth counts as two such plies of half its weight, crossed.',
    Picture: picture.OnePly,
  },
  {
    id: 'bending-stiffness',
    name: 'Stiffness in bending and twist',
    also: 'EI, GJ, rigidity, flex',
    says: 'How hard a tube is to bend, EI, and to twist, GJ. Twice as much, and the same load moves it half as far. Fibers along the tube give bending, fibers at 45° give twist, and a larger diameter gives most.',
    Picture: picture.Bending,
  },
  {
    id: 'ring-softness',
    name: 'Gives when squeezed',
    also: 'ring stiffness, ovalization, crush, goes flat, oval',
    says: 'A thin wall lets a tube go flat between two fingers. A tube that goes flat bends and buckles early, and a clamp crushes it. Fibers round the tube and a thicker wall help most.',
    Picture: picture.Squeezed,
  },
  {
    id: 'proof-test',
    name: 'Proof test',
    also: 'proof load, bend test, hang a weight, dial',
    says: 'A known weight hung on the finished tube, and how far it goes down read beside what the plan says. Off again, a sound tube goes back to where it lay. It tells stiffness, and that it bore this once.',
    Picture: picture.ProofTest,
  },
  {
    id: 'effective-modulus',
    name: 'Effective modulus',
    also: 'real stiffness, against plan, modulus, E',
    says: 'What the fibers and resin of your own tube really gave along it, told by how far a weight bent it. The plan goes by a book’s figure. Three tubes tested tell what your hands and your cloth make of it.',
    Picture: picture.AgainstPlan,
  },
];
