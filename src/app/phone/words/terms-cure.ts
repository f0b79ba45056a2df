import * as picture from './pictures/cure.tsx';
import type { Term } from './term.ts';

export const cureTerms: readonly Term[] = [
  {
    id: 'release',
    name: 'Release',
    also: 'release film, sleeve, wax, PVA, release agent',
    says: 'What keeps the tube from sticking to the mandrel: a film sleeve, wax with a PVA coat, or a wiped-on one that bonds to the metal. It has its own limit of heat. A film is weighed in and out: what is missing is still in the tube.',
    Picture: picture.ReleaseFilm,
  },
  {
    id: 'tape-overlap',
    name: 'Overlap of the tape',
    also: 'shrink tape, advance, half overlap, passes',
    says: 'How far each turn of tape lies on the one before. At half, every place is covered twice in one pass. More overlap and more passes squeeze harder.',
    Picture: picture.TapeOverlap,
  },
  {
    id: 'squeeze',
    name: 'Squeeze of the tape',
    also: 'pressure, compaction, consolidation, tension',
    says: 'Hot tape shrinks and presses the wall together. A thin tube is pressed harder than a fat one by the same tape. It only helps while the resin still flows.',
    Picture: picture.Squeeze,
  },
  {
    id: 'gel',
    name: 'Gel',
    also: 'gelled, set, strings, kick',
    says: 'The moment resin stops flowing and turns to jelly. Before it, keep the mandrel turning. After it, tape squeezes nothing more. Prick a bead at a tape edge to find out.',
    Picture: picture.Gel,
  },
  {
    id: 'hold',
    name: 'Ramp and hold',
    also: 'soak, dwell, cure schedule, heating rate',
    says: 'On a ramp the oven goes up by so many degrees a minute. On a hold it stays. The hold counts from when the coldest part is there, not the air.',
    Picture: picture.RampAndHold,
  },
  {
    id: 'tg',
    name: 'Tg',
    also: 'glass transition, softens at, heat limit, HDT',
    says: 'Glass transition: the temperature at which cured resin goes soft. It ends some degrees above the hottest it was cured at. Keep it well over the hottest day in the sun, or the tube sags.',
    Picture: picture.Tg,
  },
  {
    id: 'cure-time-used',
    name: 'Cure time used',
    also: 'cure progress, equivalent time',
    says: 'How much of the cure time on the data sheet has gone by, with hot minutes counting more and cool ones less. It counts time. It does not say how hard the resin is: feel the samples.',
    Picture: picture.CureTimeUsed,
  },
  {
    id: 'sample',
    name: 'Sample of a cup',
    also: 'witness, fingernail, hardness',
    says: 'A little of every cup, kept and numbered, cured beside the tube. One that stays soft says which cup was off, and so what is soft inside the tube.',
    Picture: picture.Sample,
  },
  {
    id: 'oven-load',
    name: 'Oven load',
    also: 'firing, cure run, batch, part sensor, air sensor',
    says: 'One firing of the oven, with one tube in it or several. Readings are written once and count for every tube in there. A part sensor sits on the thickest tube, the air sensor hangs beside it.',
    Picture: picture.OvenLoad,
  },
  {
    id: 'postcure',
    name: 'Postcure',
    also: 'second cure, free-standing',
    says: 'A second time in the oven, off the mandrel, slower and hotter, so that the tube stands more heat later. Hold it straight all along: it is soft on the way up.',
    Picture: picture.Postcure,
  },
  {
    id: 'demold',
    name: 'Room to demold',
    also: 'clearance, demolding, stuck, pull off',
    says: 'How much wider the bore is than the mandrel. Cooling shrinks metal away from the tube. Pulled before there is room, it scores the bore.',
    Picture: picture.DemoldRoom,
  },
];
