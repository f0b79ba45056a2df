import type { Made } from '#app/made/learned/made-facts.ts';
import { fromTo } from '#app/made/results/from-to.ts';
import { type Fact, facts, isNumber, type NumberFact } from './facts.ts';

export interface Cell {
  text: string;
  /** Where it stands among the others, said in a sign and a word. */
  mark?: 'most' | 'least' | 'other';
}

export interface FactRow {
  fact: Fact;
  cells: Cell[];
}

export interface Sameness {
  fact: Fact;
  /** What all have in common. */
  text: string;
  /** How many of them say so; the others were not weighed, measured or read. */
  said: number;
}

export interface Comparison {
  differ: FactRow[];
  same: Sameness[];
}

/** 'not known' where a build says nothing. */
const nothing = '–';

/** The ends are marked where they stand apart: what half of the builds do is no end. */
function markNumbers(fact: NumberFact, made: readonly Made[], texts: readonly string[]): Cell[] {
  const values = made.map(fact.value);
  const known = values.filter((v) => v !== undefined);
  const [least, most] = [Math.min(...known), Math.max(...known)];
  const isMost = (v: number) => most - v < Math.min(fact.matters, (most - least) / 2);
  const isLeast = (v: number) => v - least < Math.min(fact.matters, (most - least) / 2);
  const few = (is: (v: number) => boolean) => 2 * known.filter(is).length <= known.length;
  const [mostStands, leastStands] = [few(isMost), few(isLeast)];
  return texts.map((text, i) => {
    const value = values[i];
    if (value === undefined) return { text };
    if (mostStands && isMost(value)) return { text, mark: 'most' };
    return leastStands && isLeast(value) ? { text, mark: 'least' } : { text };
  });
}

/** What most of them say is the rule; the rest is the other. */
function markWords(texts: readonly string[]): Cell[] {
  const counts = new Map<string, number>();
  for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1);
  const [[common, often] = ['', 0], second] = [...counts].sort((a, b) => b[1] - a[1]);
  const noRule = second?.[1] === often;
  return texts.map((text) =>
    text === nothing || (!noRule && text === common) ? { text } : { text, mark: 'other' },
  );
}

function sameNumbers(fact: NumberFact, made: readonly Made[]): Sameness | undefined {
  const known = made.map(fact.value).filter((v) => v !== undefined);
  const [least, most] = [Math.min(...known), Math.max(...known)];
  // A hair over is how decimals are kept.
  if (most - least >= fact.matters * (1 - 1e-9)) return undefined;
  return { fact, text: fromTo(fact.shown(least), fact.shown(most)), said: known.length };
}

function sameWords(fact: Fact, texts: readonly string[]): Sameness | undefined {
  const said = texts.filter((t) => t !== nothing);
  const [text = ''] = said;
  return said.every((t) => t === text) ? { fact, text, said: said.length } : undefined;
}

/** What tells these builds apart, and what does not; what none of them says is left out. */
export function compareBuilds(made: readonly Made[]): Comparison {
  const comparison: Comparison = { differ: [], same: [] };
  for (const fact of facts) {
    const texts = made.map((m) => fact.says(m) ?? nothing);
    if (texts.every((t) => t === nothing)) continue;
    const same = isNumber(fact) ? sameNumbers(fact, made) : sameWords(fact, texts);
    if (same) comparison.same.push(same);
    else {
      const cells = isNumber(fact) ? markNumbers(fact, made, texts) : markWords(texts);
      comparison.differ.push({ fact, cells });
    }
  }
  return comparison;
}
