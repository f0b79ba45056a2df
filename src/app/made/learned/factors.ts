import { firstGoal } from '#app/planning/making/first-goal.ts';
import { curedPlyThickness, fiberMassFraction, type Spread, spread } from '#calc';
import type { BuildSummary, OvenSummary } from '#shared/record/summary.ts';
import type { Made } from './made-facts.ts';

export const factorKinds = [
  'lossPerCup',
  'totalLoss',
  'squeezeOut',
  'resinShare',
  'fiberVolume',
  'plyThickness',
  'stiffness',
  'ring',
  'workingRate',
  'arealWeight',
  'overshoot',
] as const;
export type FactorKind = (typeof factorKinds)[number];

/** One build or oven load that a factor comes from. */
export interface Source {
  to: string;
  title: string;
  value: number;
}

export interface Factor {
  kind: FactorKind;
  /** What its builds have in common; empty for the whole shop. */
  of: string;
  spread: Spread;
  /** What a builder without builds of their own would take, SI */
  book?: number;
  /** Newest first */
  sources: Source[];
}

/** With fewer nobody knows which one was the odd one. */
export const enough = 3;

export const tooFew = ({ spread: { count } }: Pick<Factor, 'spread'>): boolean => count < enough;

/** Names of things that summaries hold by their ids, and of temperatures in the builder's units. */
export interface Words {
  lot: (id: string) => string | undefined;
  shopHeat: (kelvin: number | undefined) => string;
}

interface Rule {
  value: (made: Made) => number | undefined;
  group: (made: Made, words: Words) => string;
  book?: (build: BuildSummary) => number;
}

const bookFiber = firstGoal.fiberVolumeFraction;

const method = ({ build }: Made) =>
  [build.cloth, build.release, build.tape].filter((part) => part !== undefined).join(', ');

function lotOf({ build }: Made, { lot }: Words): string {
  const drawn = build.draws.filter((d) => d.of === 'cloth' && d.amount > 0);
  const name = [...new Set(drawn.flatMap((d) => lot(d.lot) ?? []))].join(' and ');
  return name ? `${build.cloth}, ${name}` : `${build.cloth}, lot not named`;
}

function realArealWeight({ build }: Made): number | undefined {
  const { weighedCloth, clothArea } = build;
  return weighedCloth === undefined || clothArea === undefined ? undefined : weighedCloth / clothArea;
}

const rules: Record<Exclude<FactorKind, 'overshoot'>, Rule> = {
  lossPerCup: { value: (m) => m.lossPerCup, group: () => '', book: () => firstGoal.lossPerCup },
  totalLoss: { value: (m) => m.totalLossPerCup, group: () => '' },
  squeezeOut: {
    value: (m) => m.squeezedOut,
    group: ({ build }, { shopHeat }) =>
      `${build.tape ?? 'No tape named'}, ${shopHeat(build.shopTemperature)}`,
    book: () => firstGoal.squeezeOut,
  },
  resinShare: {
    value: (m) => m.resinShare,
    group: method,
    book: ({ fiberDensity, resinDensity }) =>
      1 - fiberMassFraction({ fiberVolumeFraction: bookFiber, fiberDensity, resinDensity }),
  },
  fiberVolume: { value: (m) => m.fiberVolume, group: method, book: () => bookFiber },
  plyThickness: {
    value: (m) => m.plyThickness,
    group: ({ build }) => build.cloth,
    book: ({ arealWeight, fiberDensity }) =>
      curedPlyThickness({ arealWeight, fiberDensity, fiberVolumeFraction: bookFiber }),
  },
  stiffness: { value: (m) => m.stiffness, group: ({ build }) => build.cloth, book: () => 1 },
  ring: { value: (m) => m.ring, group: ({ build }) => build.cloth, book: () => 1 },
  workingRate: { value: (m) => m.workingRate, group: () => '' },
  arealWeight: { value: realArealWeight, group: lotOf, book: ({ arealWeight }) => arealWeight },
};

function factorOf(kind: FactorKind, of: string, sources: Source[], book?: number): Factor {
  return {
    kind,
    of,
    sources,
    spread: spread({ values: sources.map((s) => s.value) }),
    ...(book !== undefined && { book }),
  };
}

/** One factor from the builds that say something of it, whatever they have in common. */
export function factorFrom(
  kind: Exclude<FactorKind, 'overshoot'>,
  made: readonly Made[],
  of = '',
): Factor | undefined {
  const { value, book } = rules[kind];
  const sources = made.flatMap((m): Source[] => {
    const v = value(m);
    return v === undefined ? [] : [{ to: `/record/build/${m.build.subject}`, title: m.title, value: v }];
  });
  const newest = made.find((m) => value(m) !== undefined)?.build;
  return sources.length === 0 || !newest ? undefined : factorOf(kind, of, sources, book?.(newest));
}

function grouped(kind: Exclude<FactorKind, 'overshoot'>, made: readonly Made[], words: Words): Factor[] {
  const groups = new Map<string, Made[]>();
  for (const one of made) {
    const name = rules[kind].group(one, words);
    const group = groups.get(name) ?? [];
    group.push(one);
    groups.set(name, group);
  }
  return [...groups]
    .flatMap(([name, builds]) => factorFrom(kind, builds, name) ?? [])
    .sort((a, b) => b.spread.count - a.spread.count);
}

/** How far the oven's air went over the hold that was asked for. */
function overshoot(ovens: readonly OvenSummary[]): Factor[] {
  const sources = ovens.flatMap((o): Source[] =>
    o.highestAir === undefined || o.wantedHold === undefined
      ? []
      : [
          {
            to: `/record/oven/${o.subject}`,
            title: `Oven load ${o.number}`,
            value: o.highestAir - o.wantedHold,
          },
        ],
  );
  return sources.length === 0 ? [] : [factorOf('overshoot', '', sources)];
}

/** Everything that this shop's own builds say, kind by kind, the best founded first. */
export function factorsOf(made: readonly Made[], ovens: readonly OvenSummary[], words: Words): Factor[] {
  return factorKinds.flatMap((kind) =>
    kind === 'overshoot' ? overshoot(ovens) : grouped(kind, made, words),
  );
}
