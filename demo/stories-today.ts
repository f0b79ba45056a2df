import type { BuildStory } from './bench.ts';
import { daysBack, minute } from './shop-time.ts';

/** How long ago the hold of today's oven load began, and hardener went into the boom's first cup. */
export const heldFor = 110 * minute;
export const cupSince = 9 * minute;

/** In the oven since it was lit; so is the sprit. */
export function upperMastTwo(now: number, litAt: number): BuildStory {
  return {
    number: 2,
    seed: 61,
    prepAt: daysBack(now, 3, '08:41'),
    setUpAt: litAt - 218 * minute,
    hardenerAt: litAt - 170 * minute,
    surroundings: { air: 21, resin: 22, mandrel: 21, humidity: 50 },
    squeezedOut: 0.1,
    stopAt: 'cure-held',
  };
}

export function spritThree(now: number, litAt: number): BuildStory {
  return {
    number: 3,
    seed: 73,
    roll: 'demo-lot-plain-3',
    prepAt: daysBack(now, 2, '13:20'),
    setUpAt: litAt - 104 * minute,
    hardenerAt: litAt - 66 * minute,
    surroundings: { air: 22, resin: 22, mandrel: 22, humidity: 49 },
    squeezedOut: 0.1,
    stopAt: 'cure-held',
  };
}

/** Hardener is in the first of its cups. Roll 2 came to its end in it: the last of its cloth is from roll 3. */
export function boomTwo(now: number): BuildStory {
  return {
    number: 2,
    seed: 85,
    prepAt: daysBack(now, 2, '08:05'),
    rest: { lot: 'demo-lot-plain-3', area: 0.12 },
    setUpAt: now - 52 * minute,
    hardenerAt: now - cupSince,
    surroundings: { air: 23, resin: 23, mandrel: 22, humidity: 47 },
    squeezedOut: 0.1,
    cups: [{}],
    cupInUse: true,
  };
}

/** Cut this morning, not weighed yet; nothing is wet. */
export function lowerMastTwo(now: number): BuildStory {
  return {
    number: 2,
    seed: 97,
    roll: 'demo-lot-plain-3',
    prepAt: daysBack(now, 0, '06:02'),
    squeezedOut: 0.1,
    stopAt: 'cut-weighed',
    before: {
      'cut-cut': (bench) => bench.note('From the new plan: semi-permanent release, SLOW, 66 C.'),
    },
  };
}
