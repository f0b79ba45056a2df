import type { ChecklistStage, Step } from '#shared/record/checklist.ts';
import { minutes } from './quantities.ts';
import { step } from './starter-step.ts';

/** The same coat several times over, each with its wait. */
function coats(
  id: string,
  count: number,
  text: (coat: number) => string,
  waits: number,
  hint: string,
): Step[] {
  return Array.from({ length: count }, (_, i) =>
    step(`${id}-${i + 1}`, text(i + 1), i === 0 ? { waits, hint } : { waits }),
  );
}

export function filmSleeve(): ChecklistStage {
  return {
    stage: 'release',
    steps: [
      step('sleeve-weighed', 'Sleeve film cut and weighed', {
        role: 'weighFilmIn',
        hint: 'Film in less film out is what stayed in the tube.',
      }),
      step('sleeve-wrapped', 'Wrapped once, taped along one line'),
      step('sleeve-smooth', 'No wrinkle, no lump, seam flat', {
        hint: 'Every wrinkle prints into the bore.',
      }),
      step('sleeve-sprayed', 'Sprayed thin and even', {
        waits: minutes(15),
        hint: 'Mask on, door open, no flame.',
      }),
      step('sleeve-dry', 'Flashed off: dull, no smell left', {
        hint: 'Solvent under wet cloth blisters it, and burns in the oven.',
      }),
    ],
  };
}

export function waxAndPva(): ChecklistStage {
  return {
    stage: 'release',
    steps: [
      ...coats(
        'wax',
        5,
        (n) => `Wax coat ${n} on, hazed and buffed`,
        minutes(30),
        'Thin, to the very ends. 15 to 60 minutes a coat, as its can says.',
      ),
      step('pva-mist', 'PVA mist coat sprayed', {
        waits: minutes(15),
        hint: 'Only a fog: it gives the wet coats something to hold to.',
      }),
      ...coats(
        'pva-wet',
        2,
        (n) => `PVA wet coat ${n} sprayed`,
        minutes(25),
        'Closed and glossy, no runs. Keep water away from now on.',
      ),
      step('pva-dry', 'PVA dry everywhere, no bare spot', {
        hint: 'A damp coat feels cold to the back of the hand, and blisters in the oven.',
      }),
    ],
  };
}

export function semiPermanent(): ChecklistStage {
  return {
    stage: 'release',
    steps: [
      step('semi-bare', 'Bare metal: no wax, no old resin', {
        hint: 'It bonds to metal, and to nothing else.',
      }),
      ...coats(
        'semi',
        4,
        (n) => `Wipe ${n} on, streaks gone`,
        minutes(15),
        'A wet rag one way, a dry rag after it. Gloves on, door open.',
      ),
      step('semi-cured', 'Left alone to cure', {
        waits: minutes(60),
        hint: 'Warm shortens it; its can says how long.',
      }),
      step('semi-proved', 'Masking tape will not stick to it'),
    ],
  };
}
