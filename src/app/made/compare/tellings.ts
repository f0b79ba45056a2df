import type { Made } from '#app/made/learned/made-facts.ts';
import { facts, isNumber, type NumberFact } from './facts.ts';
import { type Group, sentenceOf, type Telling } from './sentences.ts';

/** What builds have in common that a builder chooses. */
export const kinds = {
  release: { label: 'Release', joined: 'on', of: ({ build }: Made) => build.release },
  tape: { label: 'Shrink tape', joined: 'under', of: ({ build }: Made) => build.tape },
  resin: { label: 'Resin', joined: 'with', of: ({ build }: Made) => build.resin },
} as const;
export type Kind = keyof typeof kinds;

const said: Record<string, { did: string; none?: string; by: readonly Kind[] }> = {
  film: { did: 'left {} of film inside', none: 'left none', by: ['release'] },
  resinShare: { did: 'came out at {} resin', by: ['tape', 'release', 'resin'] },
  plyThickness: { did: 'came out at {} a ply', by: ['tape', 'release'] },
  loss: { did: 'lost {} a cup', by: ['resin'] },
  squeezedOut: { did: 'had {} squeezed out', by: ['tape', 'resin'] },
  'rated-surface': { did: 'have a surface rated {}', by: ['tape', 'release'] },
  'rated-release': { did: 'came off {}', by: ['release'] },
  'rated-drySpots': { did: 'have dry spots: {}', by: ['resin', 'tape'] },
};

function groupsBy(made: readonly Made[], kind: Kind, fact: NumberFact): Group[] {
  const groups = new Map<string, number[]>();
  for (const one of made) {
    const name = kinds[kind].of(one);
    const value = fact.value(one);
    if (name === undefined || value === undefined) continue;
    const group = groups.get(name) ?? [];
    group.push(value);
    groups.set(name, group);
  }
  return [...groups].map(([name, values]) => ({ name, values }));
}

function tellingsOf(made: readonly Made[], fact: NumberFact): Telling[] {
  const words = said[fact.key];
  if (!words) return [];
  const { did, none, by } = words;
  return by.map((kind) => ({
    joined: kinds[kind].joined,
    groups: groupsBy(made, kind, fact),
    did,
    ...(none !== undefined && { none }),
    matters: fact.matters,
    shown: fact.shown,
  }));
}

/** The plain sentences that these builds carry; often none. */
export function sentencesOf(made: readonly Made[]): string[] {
  return facts
    .filter(isNumber)
    .flatMap((fact) => tellingsOf(made, fact))
    .flatMap((telling) => sentenceOf(telling) ?? []);
}
