import * as picture from './pictures/wall.tsx';
import type { Term } from './term.ts';

export const wallTerms: readonly Term[] = [
  {
    id: 'mandrel',
    name: 'Mandrel',
    also: 'bar, former, mold, core tube',
    says: 'What the tube is rolled on. Leave some of it bare at both ends to grip and to pull.',
    Picture: picture.Mandrel,
  },
  {
    id: 'end-0',
    name: 'End 0',
    also: 'datum end, datum edge, zero',
    says: 'The end of the tube that all lengths are measured from, the same one from plan to trimmed tube. Mark it on cloth and mandrel. The datum edge is the straight edge of a cut piece, the one that is laid on the line first.',
    Picture: picture.EndZero,
  },
  {
    id: 'station',
    name: 'Station',
    also: 'place, position along the tube',
    says: 'A place along the tube, told by how far it is from end 0. There you say how thick the wall is to be, and there you measure it later. Between two stations it goes over evenly.',
    Picture: picture.Station,
  },
  {
    id: 'piece',
    name: 'Piece',
    also: 'layer, panel',
    says: 'One cut piece of cloth, core or film. Pieces lie in the wall in the order they are wrapped, the first one on the mandrel.',
  },
  {
    id: 'plies',
    name: 'Wraps and plies',
    also: 'turns, layers, laminate, ply count',
    says: 'A wrap is one turn of the cloth round the tube. Plies are how many layers lie under your thumb. With two and a half wraps one side has three plies, the other has two.',
    Picture: picture.WrapsAndPlies,
  },
  {
    id: 'cured-ply',
    name: 'A cured ply',
    also: 'ply thickness, layer thickness',
    says: 'How thick one layer is once it is cured. It follows from the weight of the cloth and from how much resin stays in. Your own tubes tell it best: measure the wall and divide by the plies.',
  },
  {
    id: 'wall',
    name: 'Wall',
    also: 'thickness',
    says: 'How thick the tube is between bore and outside. Where a wrap is not whole it differs round the tube by one ply.',
    Picture: picture.Wall,
  },
  {
    id: 'seam',
    name: 'Seam',
    also: 'outer edge, joint',
    says: 'The line along the tube where the outer edge of the cloth lies. Turn it to where the load does least, away from the middle of the sides.',
    Picture: picture.Seam,
  },
  {
    id: 'step',
    name: 'Step of a wrap',
    also: 'fractional wrap, extra ply, drop, ply drop',
    says: 'Where a wrap that is not whole ends, the wall drops by one ply. Lay the thicker side where the load presses, and do not let two steps lie on each other.',
    Picture: picture.Step,
  },
  {
    id: 'developed-width',
    name: 'Developed width',
    also: 'flat width, cloth width, template',
    says: 'How wide the cloth is cut, laid flat, so that it goes round as often as you want. Every wrap is a little longer than the one under it, and a tapered tube makes a shape with curved ends.',
    Picture: picture.DevelopedWidth,
  },
  {
    id: 'lap',
    name: 'Lap',
    also: 'overlap of cloth, butt',
    says: 'Cloth past the last whole wrap. One wrap alone only butts edge to edge and opens under load: give it a lap.',
    Picture: picture.Lap,
  },
  {
    id: 'warp',
    name: 'Warp and bias',
    also: 'fiber direction, 45 degrees, angle',
    says: 'Warp threads run along the roll. Laid straight they carry bending. Turned to 45° the cloth is on the bias: it carries twist, and drapes round a taper.',
    Picture: picture.Warp,
  },
  {
    id: 'areal-weight',
    name: 'Weight of the cloth',
    also: 'areal weight, gsm, grams per square meter, ounces per square yard, oz',
    says: 'What one square meter or one square yard of it weighs, dry. Cut a square, weigh it, divide. All resin is counted from it.',
    Picture: picture.ArealWeight,
  },
];
