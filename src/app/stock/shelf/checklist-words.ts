import type { StepRole } from '#shared/record/checklist.ts';

/** What a step does besides being ticked. */
const roleWords: Record<StepRole, string> = {
  surroundings: 'Air, resin and mandrel are read',
  dryRun: 'Dry run: asked for before the first cup',
  rotation: 'Rotation runs: asked for before hardener',
  mix: 'Opens the mixing',
  weighCloth: 'Dry cloth is weighed',
  weighFilmIn: 'Film that goes in is weighed',
  weighFilmOut: 'Film that came out is weighed',
  filmsIn: 'Films are counted in',
  weighWet: 'Wet cloth is weighed',
  filmsOut: 'Films are counted out: asked for before tape',
  oven: 'Opens the oven load',
  rotationOff: 'Rotation is stopped',
  weighCured: 'The tube is weighed',
  measure: 'Opens the measuring',
  samples: 'Samples of the cups are felt',
  judge: 'The tube is judged',
};

export const roleOptions: { value: StepRole | ''; label: string }[] = [
  { value: '', label: 'A tick, nothing else' },
  ...Object.entries(roleWords).map(([value, label]) => ({ value: value as StepRole, label })),
];
