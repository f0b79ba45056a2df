import type { ChecklistStage } from '#shared/record/checklist.ts';
import { minutes } from './quantities.ts';
import { step } from './starter-step.ts';

export function mix(): ChecklistStage {
  return {
    stage: 'mix',
    steps: [
      step('mix-films', 'Wet-out films counted and weighed', {
        role: 'filmsIn',
        hint: 'The same number has to come out again before tape goes on.',
      }),
      step('mix-masking', 'Masking off the cloth', { hint: 'Masking rolled in is a weak line in the wall.' }),
      step('mix-cups', 'Cups mixed by weight', {
        role: 'mix',
        hint: 'Resin first. Stir 2 to 3 minutes; scrape sides, bottom and stick.',
      }),
      step('mix-samples', 'Sample of every cup kept, labeled', {
        hint: 'A cup off its ratio never cures. Only its sample tells.',
      }),
      step('mix-emptied', 'Cups poured out flat at once', {
        hint: 'A deep cup heats itself. If it smokes: outside, uncovered, nobody over it, never in a bin.',
      }),
    ],
  };
}

export function wetOut(): ChecklistStage {
  return {
    stage: 'wetOut',
    steps: [
      step('wet-half', 'Half the resin spread on the film'),
      step('wet-soak', 'Cloth laid on it, left to soak', {
        waits: minutes(3),
        hint: 'It darkens by itself from below. Pressing now shuts air in.',
      }),
      step('wet-rest', 'Rest of the resin, then the top film'),
      step('wet-even', 'Squeegeed from the middle out', {
        hint: 'Along the fibers, until it is even: nothing milky, no pools.',
      }),
      step('wet-weighed', 'Wet cloth weighed between its films', {
        role: 'weighWet',
        hint: 'The one resin figure that can still be put right.',
      }),
    ],
  };
}

export function wrap(): ChecklistStage {
  return {
    stage: 'wrap',
    steps: [
      step('wrap-edge', 'First edge on the line, tacked', {
        hint: 'Parallel to the axis to 1 or 2 mm (1/16 in), or it walks along the mandrel.',
      }),
      step('wrap-rolled', 'Rolled firm, film peeled as it goes'),
      step('wrap-lands', 'Outer edge lands where planned', {
        hint: 'More than 5 mm (3/16 in) off: wrong width, wrong mandrel, or slack.',
      }),
      step('wrap-films', 'Films out counted: as many as went in', {
        role: 'filmsOut',
        hint: 'One film left in the wall ruins the tube.',
      }),
    ],
  };
}

export function shrinkTape(): ChecklistStage {
  return {
    stage: 'shrinkTape',
    steps: [
      step('tape-started', 'Coated side down, start locked', {
        hint: 'Turn the way the cloth was rolled, or the tape unrolls it.',
      }),
      step('tape-first', 'First pass end to end, half overlap', {
        hint: 'Tape under tension lets go: keep your face out of its line.',
      }),
      step('tape-back', 'Second pass back, same turn'),
      step('tape-locked', 'Ends locked, one end free to slide', {
        hint: 'The mandrel grows in the oven. Tape fixed to it at both ends tears.',
      }),
    ],
  };
}
