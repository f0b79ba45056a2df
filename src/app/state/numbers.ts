import type { Summary } from '#shared/record/summary.ts';
import { allSummaries, refreshSummaries } from './all-summaries.ts';

/** Every number given so far, by what it counts. */
function numbersGiven<T extends Summary>(all: readonly T[], nameOf: (s: T) => string): Map<string, number> {
  const most = new Map<string, number>();
  for (const s of all) most.set(nameOf(s), Math.max(most.get(nameOf(s)) ?? 0, s.number));
  return most;
}

const plain = (name: string) => name.trim().toLowerCase();

/**
 * The next 'no.' of any tube's name, read once and asked with every key. Two phones may give the same one; the builds
 * stay apart by their ids.
 */
export async function buildNumbers(): Promise<(name: string) => number> {
  await refreshSummaries();
  const given = numbersGiven(allSummaries.peek()?.builds ?? [], (s) => plain(s.name));
  return (name) => 1 + (given.get(plain(name)) ?? 0);
}

export async function nextBuildNumber(name: string): Promise<number> {
  return (await buildNumbers())(name);
}

export async function nextOvenLoadNumber(): Promise<number> {
  await refreshSummaries();
  return 1 + (numbersGiven(allSummaries.peek()?.ovens ?? [], () => '').get('') ?? 0);
}
