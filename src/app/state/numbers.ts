import type { Summary } from '#shared/record/summary.ts';
import { theStore } from './shop.ts';

const pageSize = 500;

async function greatest(of: Summary['of'], counts: (s: Summary) => boolean): Promise<number> {
  let after: string | undefined;
  let most = 0;
  do {
    const page = await theStore().summaries({ of, limit: pageSize, ...(after !== undefined && { after }) });
    for (const s of page.summaries) if (counts(s)) most = Math.max(most, s.number);
    after = page.next;
  } while (after !== undefined);
  return most;
}

const same = (a: string, b: string) => a.trim().toLowerCase() === b.trim().toLowerCase();

/** The next 'no.' of a tube's name. Two phones may give the same one; the builds stay apart by their ids. */
export async function nextBuildNumber(name: string): Promise<number> {
  return 1 + (await greatest('build', (s) => s.of === 'build' && same(s.name, name)));
}

export async function nextOvenLoadNumber(): Promise<number> {
  return 1 + (await greatest('ovenLoad', () => true));
}
