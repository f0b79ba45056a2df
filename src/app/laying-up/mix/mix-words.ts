import { show } from '#app/state/show.ts';
import type { CupState } from '#shared/record/cup-state.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { formatNumber } from '#shared/units/format.ts';
import { hardenerPerResin } from './recipe.ts';

/** As it stands on the can: 'SLOW, lot 7'. */
export const canWords = ({ hardener, lot }: ResinSystem) => (lot ? `${hardener}, lot ${lot}` : hardener);

/** 'SLOW hardener, lot 7' */
export function hardenerWords({ hardener, lot }: ResinSystem): string {
  return lot ? `${hardener} hardener, lot ${lot}` : `${hardener} hardener`;
}

/** The ratio in grams, however the data sheet states it, since the bench has a scale. */
export function ratioWords(resin: ResinSystem): string {
  const grams = `${formatNumber(100 * hardenerPerResin(resin), 1, true)}\u00a0g of ${resin.hardener} to 100\u00a0g of resin`;
  const { ratio } = resin;
  switch (ratio.by) {
    case 'weight':
      return grams;
    case 'volume':
      return `${grams} (${ratio.resinParts}:${ratio.hardenerParts} by volume)`;
    case 'equivalents':
      return `${grams} (equivalents of ${ratio.epoxide} and ${ratio.amineHydrogen})`;
  }
}

export const cupWords = ({ number, of }: Pick<CupState, 'number' | 'of'>) => `Cup ${number} of ${of}`;

export const percentWords = (share: number) => show(Math.abs(share), 'fraction');

/** 'rich by 6.6 %'; an error that shows as nothing is none. */
export function offWords(error: number): string {
  if (Math.abs(error) < 0.0005) return 'right on its ratio';
  return `${error > 0 ? 'rich' : 'lean'} by ${percentWords(error)}`;
}

export const inCups = (count: number) => (count === 1 ? '1 cup' : `${count} cups`);
