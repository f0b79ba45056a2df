import type { BuildStory } from './bench.ts';
import { onScale } from './draw.ts';
import { daysBack, minute } from './shop-time.ts';

/** Went by the plan; one cup's hardener ran over and was put right, and one weight was written on the wrong tube. */
export function boomOne(now: number): BuildStory {
  return {
    number: 1,
    seed: 11,
    prepAt: daysBack(now, 37, '08:20'),
    setUpAt: daysBack(now, 36, '09:02'),
    hardenerAt: daysBack(now, 36, '09:48'),
    demoldAt: daysBack(now, 35, '09:10'),
    cups: [{}, { hardenerOff: 0.0021, putRight: true }],
    surroundings: { air: 21, resin: 22, mandrel: 21, humidity: 52 },
    squeezedOut: 0.11,
    lossPerCup: 0.0118,
    weighsLoss: true,
    stiffAs: 0.93,
    rated: { surface: 3, release: 2, drySpots: 3, straightness: 3 },
    before: {
      'trim-sealed': (bench) => {
        const slip = bench.say({ kind: 'weight', what: 'offcut', ...onScale(0.0312) });
        bench.pass(3);
        bench.say({ kind: 'retracted', corrects: slip });
        bench.note('That offcut was the glass test tube, not this one.');
      },
      'measure-judged': (bench) =>
        bench.note('Surface smooth, faint spiral from the tape. Came off with one twist.'),
    },
  };
}

/** FAST gelled before the tape was on: nothing was squeezed out, and a second cup had gone in. */
export function spritOne(now: number): BuildStory {
  return {
    number: 1,
    seed: 23,
    prepAt: daysBack(now, 30, '12:40'),
    setUpAt: daysBack(now, 30, '14:31'),
    hardenerAt: daysBack(now, 30, '15:14'),
    demoldAt: daysBack(now, 29, '09:35'),
    cups: [{}, { mass: 0.04, hardenerOff: -0.0005 }],
    surroundings: { air: 26, resin: 25, mandrel: 25, humidity: 44 },
    squeezedOut: 0.01,
    lossPerCup: 0.012,
    weighsLoss: true,
    rated: { surface: 2, release: 3, drySpots: 3, straightness: 3 },
    judged: { outcome: 'good', text: 'Rich and heavy, but sound. Kept as the spare.' },
    before: {
      'mix-cups': (bench) => {
        bench.say({ kind: 'override', guard: 'dryRun', round: 1, reason: 'anotherWay' });
      },
      'wet-even': (bench) => bench.note('Looked dry at one end, so a second small cup went on.'),
      'tape-back': (bench) =>
        bench.note('Warm in here. Resin strings already and will not move under the tape.'),
      'measure-judged': (bench) =>
        bench.note('Rich: second cup was not needed, and the tape squeezed nothing. Use SLOW next time.'),
    },
    tickedLate: { with: 'mix-emptied', steps: ['setup-dry-run'] },
  };
}

/** The thermostat stuck: the film sleeve went over its limit, tore, and some of it stayed in the tube. */
export function lowerMastOne(now: number): BuildStory {
  return {
    number: 1,
    seed: 35,
    prepAt: daysBack(now, 22, '13:05'),
    setUpAt: daysBack(now, 21, '08:34'),
    hardenerAt: daysBack(now, 21, '09:21'),
    demoldAt: daysBack(now, 20, '10:02'),
    surroundings: { air: 20, resin: 21, mandrel: 20, humidity: 55 },
    squeezedOut: 0.13,
    filmLeft: 0.0041,
    stiffAs: 0.88,
    rated: { surface: 1, release: 0, drySpots: 3, straightness: 3 },
    curedMistyped: true,
    judged: { outcome: 'good', text: 'Straight and hard. Carries 4 g of film that would not come out.' },
    before: {
      'demold-film': (bench) =>
        bench.note('Film brittle as glass, tore into strips. Pulled what would come.'),
      'measure-judged': (bench) => bench.note('Slight ridges under the tape edges where it got too hot.'),
    },
  };
}

/** Good; turning was ticked late, and the wrap was ticked as a whole, with resin on the thumb. */
export function upperMastOne(now: number): BuildStory {
  return {
    number: 1,
    seed: 47,
    prepAt: daysBack(now, 13, '08:12'),
    setUpAt: daysBack(now, 12, '08:52'),
    hardenerAt: daysBack(now, 12, '09:37'),
    demoldAt: daysBack(now, 11, '09:20'),
    surroundings: { air: 23, resin: 23, mandrel: 22, humidity: 47 },
    squeezedOut: 0.12,
    lossPerCup: 0.0111,
    weighsLoss: true,
    stiffAs: 0.91,
    rated: { surface: 3, release: 2, drySpots: 2, straightness: 2 },
    tickedLate: { with: 'wrap-films', steps: ['setup-turning', 'wrap-edge', 'wrap-rolled', 'wrap-lands'] },
    before: {
      'mix-cups': (bench) => {
        bench.say({ kind: 'override', guard: 'rotation', round: 1, reason: 'doneNotTicked' });
      },
      'tape-first': (bench) => bench.note('New roll of tape: pulls harder than the last one.'),
      'measure-judged': (bench) => bench.note('Two dry specks near the top end, under the ferrule anyway.'),
    },
  };
}

/** Good, in the same oven load. */
export function spritTwo(now: number): BuildStory {
  return {
    number: 2,
    seed: 59,
    prepAt: daysBack(now, 13, '15:10'),
    setUpAt: daysBack(now, 12, '10:58'),
    hardenerAt: daysBack(now, 12, '11:31'),
    demoldAt: daysBack(now, 11, '10:45'),
    surroundings: { air: 23, resin: 23, mandrel: 22, humidity: 46 },
    squeezedOut: 0.08,
    lossPerCup: 0.013,
    weighsLoss: true,
    stiffAs: 0.95,
    rated: { surface: 2, release: 3, drySpots: 3, straightness: 3 },
    before: {
      'measure-judged': (bench) => bench.note('Much lighter than no. 1. Same mandrel, SLOW instead of FAST.'),
    },
  };
}

/** When each past oven load was lit. */
export const lit = {
  boom: (now: number) => daysBack(now, 36, '11:24'),
  sprit: (now: number) => daysBack(now, 30, '16:38'),
  lowerMast: (now: number) => daysBack(now, 21, '11:12'),
  upperMastAndSprit: (now: number) => daysBack(now, 12, '12:51') + minute,
};
