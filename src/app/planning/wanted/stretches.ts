import type { Ruling } from '#calc';
import { ruleWords } from './wanted-words.ts';
import type { Wanted } from './wanted-worker.ts';

/** A run of stations that want as many plies for the same reason. */
export interface Stretch {
  /** m: from halfway to the station before to halfway to the one after */
  from: number;
  to: number;
  plies: number;
  rules: Ruling;
  /** Numbers of its stations */
  stations: number[];
}

/** The two ways of reckoning a ply's stress are one to the builder. */
const sameRule = (a: Ruling, b: Ruling) => ruleWords(a) === ruleWords(b);

/** From end 0 on. */
export function stretchesOf({ stations }: Pick<Wanted, 'stations'>): Stretch[] {
  const found: Stretch[] = [];
  stations.forEach(({ at, plies, rules }, i) => {
    const before = stations[i - 1]?.at ?? at;
    const after = stations[i + 1]?.at ?? at;
    const last = found.at(-1);
    if (last && last.plies === plies && sameRule(last.rules, rules)) {
      last.to = (at + after) / 2;
      last.stations.push(i);
    } else found.push({ from: (before + at) / 2, to: (at + after) / 2, plies, rules, stations: [i] });
  });
  return found;
}

/** Each station with as many as the most of it and its neighbors: between two of them the edge is straight. */
export function spreadOut(plies: readonly number[]): number[] {
  return plies.map((n, i) => Math.max(plies[i - 1] ?? n, n, plies[i + 1] ?? n));
}

/** Both stations beside each short place with as many as the thicker of them. */
export function laterAt(at: readonly number[], plies: readonly number[], short: readonly number[]): number[] {
  const later = [...plies];
  for (const place of short) {
    const after = at.findIndex((a) => a >= place - 1e-9);
    const i = Math.max(1, after < 0 ? at.length - 1 : after);
    const most = Math.max(plies[i - 1] ?? 0, plies[i] ?? 0);
    later[i - 1] = Math.max(later[i - 1] ?? 0, most);
    later[i] = Math.max(later[i] ?? 0, most);
  }
  return later;
}
