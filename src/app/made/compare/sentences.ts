import { fromTo } from '#app/made/results/from-to.ts';

/** Builds that have something in common, and the figure of each that was weighed, measured or read. */
export interface Group {
  name: string;
  values: readonly number[];
}

export interface Telling {
  /** 'with', before a group's name */
  joined: string;
  groups: readonly Group[];
  /** 'left {} inside': what the builds did, with the figures in place of {} */
  did: string;
  /** Said for a group all of whose figures are 0: 'left none inside' */
  none?: string;
  /** Groups must stand further apart than this, SI */
  matters: number;
  shown: (value: number) => string;
}

/** One build is an event and two are a line through two points: somebody has to have made three the same way. */
const leastOfAGroup = 2;
const leastOfTheLargest = 3;

interface Range {
  name: string;
  count: number;
  least: number;
  most: number;
}

const rangeOf = ({ name, values }: Group): Range => ({
  name,
  count: values.length,
  least: Math.min(...values),
  most: Math.max(...values),
});

function clause(range: Range, { joined, did, none, shown }: Telling, first: boolean): string {
  const builds = first ? `${range.count} builds ` : `${range.count} `;
  const what =
    none !== undefined && range.least === 0 && range.most === 0
      ? none
      : did.replace('{}', fromTo(shown(range.least), shown(range.most)));
  return `${builds}${joined} ${range.name} ${what}`;
}

/**
 * One plain sentence where the groups do not overlap at all; otherwise nothing. It says what was, with how many, and
 * never why. Every group needs two builds and the largest three, and from the nearest of one to the nearest of the
 * next there has to be more than `matters`.
 */
export function sentenceOf(telling: Telling): string | undefined {
  const ranges = telling.groups
    .filter((g) => g.values.length >= leastOfAGroup)
    .map(rangeOf)
    .sort((a, b) => b.most - a.most);
  if (ranges.length < 2) return undefined;
  if (ranges.every((r) => r.count < leastOfTheLargest)) return undefined;
  const apart = ranges.every((r, i) => {
    const below = ranges[i + 1];
    return !below || r.least - below.most > telling.matters;
  });
  if (!apart) return undefined;
  return `${ranges.map((r, i) => clause(r, telling, i === 0)).join('; ')}.`;
}
