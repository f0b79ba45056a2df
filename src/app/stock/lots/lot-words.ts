import { milliseconds } from 'date-fns';
import { now, zoneAt } from '#app/state/now.ts';
import { show } from '#app/state/show.ts';
import type { Lot, LotKind } from '#shared/record/lot.ts';
import type { Quantity } from '#shared/units/quantity.ts';
import { formatDay } from '#shared/units/time.ts';
import { bestBy, isPast, type LotDraw, leftIn, runsOutAt } from './lot-left.ts';

export interface LotWords {
  /** 'a roll' */
  one: string;
  thing: string;
  quantity: Quantity;
  /** How many decimals a shelf needs. */
  digits: number;
  example: string;
}

export const lotWords: Record<LotKind, LotWords> = {
  cloth: { one: 'roll', thing: 'Cloth', quantity: 'area', digits: 2, example: 'Roll 2' },
  resin: { one: 'can', thing: 'Resin', quantity: 'mass', digits: 0, example: 'Can 3' },
  hardener: { one: 'bottle', thing: 'Hardener', quantity: 'mass', digits: 0, example: 'Bottle 3' },
  tape: { one: 'reel', thing: 'Tape', quantity: 'reelLength', digits: 0, example: 'Reel 1' },
};

/** '0.8 m²', '540 g', '12 m' */
export function showAmount(of: LotKind, amount: number): string {
  const { quantity, digits } = lotWords[of];
  return show(amount, quantity, digits);
}

/** What is left, or that more was drawn than it held. */
export function leftWords(of: LotKind, left: number): string {
  return left > 0 ? `${showAmount(of, left)} left` : 'empty by the record';
}

export const dayWords = (at: number): string => formatDay(at, zoneAt(at), now.value);

const month = milliseconds({ months: 1 });

export const monthsOf = (seconds: number): number => Math.round((seconds * 1000) / month);
export const secondsOf = (months: number): number => (months * month) / 1000;

const inMonths = (count: number) => (count === 1 ? '1 month' : `${count} months`);

/** Why it is not to be trusted any more; undefined while it is good. */
function pastWords(lot: Lot, at: number): string | undefined {
  const best = bestBy(lot);
  if (!best || !isPast(lot, at)) return undefined;
  if (best.by === 'label') return `past the date on its label, ${dayWords(best.at)}`;
  const opened = lot.openedAt === undefined ? '' : ` on ${dayWords(lot.openedAt)}`;
  return `opened${opened}, and it keeps ${inMonths(monthsOf(lot.keepsOpen ?? 0))} once opened`;
}

const asSentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** The same as a sentence. */
export function pastSentence(lot: Lot, at: number): string | undefined {
  const past = pastWords(lot, at);
  return past && `${asSentence(past)}.`;
}

const goneWords = (runsOut: number, at: number) =>
  dayWords(runsOut) === dayWords(at) ? 'all but gone' : `at this pace gone by ${dayWords(runsOut)}`;

/** What ends it first, for its line on the shelf. */
export function endWords(lot: Lot, draws: readonly LotDraw[], at: number): string {
  if (leftIn(lot, draws) <= 0) return 'Empty by the record: count it, or say that it is used up';
  const past = pastWords(lot, at);
  if (past) return asSentence(past);
  const best = bestBy(lot);
  const runsOut = runsOutAt(lot, draws, at);
  const goodUntil = best && `good until ${dayWords(best.at)}`;
  const gone = runsOut !== undefined && goneWords(runsOut, at);
  const first = best && runsOut !== undefined && best.at < runsOut ? [goodUntil] : [gone, goodUntil];
  const said = [lot.openedAt === undefined ? 'not opened' : '', ...first].filter(Boolean).join(', ');
  return asSentence(said);
}
