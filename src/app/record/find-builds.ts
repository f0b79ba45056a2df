import { theStore } from '#app/state/shop.ts';
import type { BuildSummary } from '#shared/record/summary.ts';

export interface Found {
  builds: BuildSummary[];
  /** There are older ones that fit or were not looked at yet. */
  more: boolean;
}

const pageSize = 200;

/** Builds whose words contain all of those asked for, newest first. */
export async function findBuilds(words: string, wanted: number): Promise<Found> {
  const asked = words.toLowerCase().split(/\s+/).filter(Boolean);
  const builds: BuildSummary[] = [];
  let after: string | undefined;
  do {
    const page = await theStore().summaries({
      of: 'build',
      limit: pageSize,
      ...(after !== undefined && { after }),
    });
    for (const s of page.summaries) {
      if (s.of === 'build' && asked.every((word) => s.words.includes(word))) builds.push(s);
    }
    after = page.next;
  } while (after !== undefined && builds.length <= wanted);
  return { builds: builds.slice(0, wanted), more: builds.length > wanted || after !== undefined };
}
