import type { Summary } from '#shared/record/summary.ts';
import { theStore } from './shop.ts';

const pageSize = 500;

/** Every number given so far, by what it counts. */
async function numbersGiven(of: Summary['of'], nameOf: (s: Summary) => string): Promise<Map<string, number>> {
  const most = new Map<string, number>();
  let after: string | undefined;
  do {
    const page = await theStore().summaries({ of, limit: pageSize, ...(after !== undefined && { after }) });
    for (const s of page.summaries) most.set(nameOf(s), Math.max(most.get(nameOf(s)) ?? 0, s.number));
    after = page.next;
  } while (after !== undefined);
  return most;
}

const plain = (name: string) => name.trim().toLowerCase();

/**
 * The next 'no.' of any tube's name, read once and asked with every key. Two phones may give the same one; the builds
 * stay apart by their ids.
 */
export async function buildNumbers(): Promise<(name: string) => number> {
  const given = await numbersGiven('build', (s) => (s.of === 'build' ? plain(s.name) : ''));
  return (name) => 1 + (given.get(plain(name)) ?? 0);
}

export async function nextBuildNumber(name: string): Promise<number> {
  return (await buildNumbers())(name);
}

export async function nextOvenLoadNumber(): Promise<number> {
  return 1 + ((await numbersGiven('ovenLoad', () => '')).get('') ?? 0);
}
