import type { RunningClock } from './clock-list.ts';
import { wordsFor } from './clock-words.ts';

const small = 'zero one two three four five six seven eight nine ten eleven twelve'.split(' ');

const inWords = (n: number) => small[n] ?? String(n);

function lasting(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  if (minutes < 1) return 'less than a minute';
  if (minutes < 60) return minutes === 1 ? 'one minute' : `${inWords(minutes)} minutes`;
  const hours = Math.round(minutes / 60);
  return hours === 1 ? 'one hour' : `${inWords(hours)} hours`;
}

/** 'Cup two, five minutes left', as a voice in the shop says it. */
export function spokenWords(clock: RunningClock): string {
  const name = clock.name.replace(/\d+/g, (n) => inWords(Number(n)));
  if (clock.phase !== 'over') return `${name}, ${lasting(clock.left)} left`;
  const todo = wordsFor(clock).word.toLowerCase();
  const since = -clock.left < 60 ? 'time is up' : `${lasting(-clock.left)} over`;
  return `${name}, ${since}. ${todo.charAt(0).toUpperCase()}${todo.slice(1)}`;
}

/** Minutes left that are told to who cannot see the digits; more would be chatter. */
const told = [2, 5, 10, 20, 30, 60];

/** What a screen reader is told of a running clock: it stays the same until the next mark or the next phase. */
export function quietWords(clock: RunningClock): string {
  if (clock.phase === 'over') return '';
  const under = told.find((minutes) => clock.left <= 60 * minutes);
  const warned = clock.phase === 'warning' ? wordsFor(clock).word.toLowerCase() : '';
  const left = under === undefined ? '' : `${inWords(under)} minutes or less`;
  const says = [left, warned].filter(Boolean).join(', ');
  return says && `${clock.name}: ${says}`;
}
