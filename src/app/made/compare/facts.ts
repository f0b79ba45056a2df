import { type Made, ratingOf } from '#app/made/learned/made-facts.ts';
import { outcomeWords } from '#app/made/record/say-entry.ts';
import { ratingNames, ratingWords } from '#app/made/results/rating-words.ts';
import { showPly } from '#app/made/results/show-ply.ts';
import { show } from '#app/state/show.ts';
import { ratingsOf } from '#shared/record/entry.ts';
import type { Quantity } from '#shared/units/quantity.ts';

/** Something that can be said of every build. */
export interface WordFact {
  key: string;
  label: string;
  says: (made: Made) => string | undefined;
}

export interface NumberFact extends WordFact {
  value: (made: Made) => number | undefined;
  /** Its value in the builder's units. */
  shown: (value: number) => string;
  /** How its axis is graduated; by its words where it has no unit. */
  unit?: { quantity: Quantity; digits?: number };
  /** Closer together than this is the same, SI (common practice, no source). */
  matters: number;
}

export type Fact = WordFact | NumberFact;

export const isNumber = (fact: Fact): fact is NumberFact => 'value' in fact;

function measured(
  key: string,
  label: string,
  value: NumberFact['value'],
  unit: { quantity: Quantity; digits?: number; matters: number },
  shown = (v: number) => show(v, unit.quantity, unit.digits),
): NumberFact {
  return {
    key,
    label,
    value,
    shown,
    matters: unit.matters,
    unit,
    says: (made) => {
      const v = value(made);
      return v === undefined ? undefined : shown(v);
    },
  };
}

const word = (key: string, label: string, says: WordFact['says']): WordFact => ({ key, label, says });

/** '+0.4 %' */
const off = (error: number) => `${error > 0 ? '+' : ''}${show(error, 'fraction')}`;

const worst = (errors: readonly number[]) =>
  errors.length === 0 ? undefined : Math.max(...errors.map(Math.abs));

const cupsOff: NumberFact = {
  key: 'ratio',
  label: 'Each cup off its ratio',
  value: (made) => worst(made.ratioErrors),
  shown: (v) => show(v, 'fraction'),
  matters: 0.01,
  unit: { quantity: 'fraction' },
  says: ({ ratioErrors }) => (ratioErrors.length === 0 ? undefined : ratioErrors.map(off).join(', ')),
};

const mass = (digits: number, matters: number) => ({ quantity: 'mass', digits, matters }) as const;
const share = (matters: number) => ({ quantity: 'fraction', digits: 0, matters }) as const;
const heat = { quantity: 'temperature', digits: 0, matters: 3 } as const;
const work = { quantity: 'duration', matters: 180 } as const;
const wholeMinutes = (seconds: number | undefined) =>
  seconds === undefined ? undefined : Math.max(60, Math.round(seconds / 60) * 60);

const rated: NumberFact[] = ratingsOf.map((what) => ({
  key: `rated-${what}`,
  label: ratingNames[what],
  value: (made) => ratingOf(made, what),
  shown: (v) => ratingWords[what][Math.round(v)] ?? '',
  matters: 0.5,
  says: (made) => ratingWords[what][ratingOf(made, what) ?? -1],
}));

/** In the order in which a builder asks. */
export const facts: readonly Fact[] = [
  word('outcome', 'Judged', ({ build }) => build.outcome && outcomeWords[build.outcome]),
  word('release', 'Release', ({ build }) => build.release ?? 'none named'),
  word('tape', 'Shrink tape', ({ build }) => build.tape ?? 'none named'),
  word('cloth', 'Cloth', ({ build }) => build.cloth),
  word('resin', 'Resin', ({ build }) => build.resin),
  measured('tube', 'Tube', (m) => m.tube, mass(0, 0.005)),
  measured('resinShare', 'Resin in the laminate', (m) => m.resinShare, share(0.02)),
  measured('fiberVolume', 'Fiber volume', (m) => m.fiberVolume, share(0.02)),
  measured(
    'plyThickness',
    'A cured ply',
    (m) => m.plyThickness,
    { quantity: 'thickness', matters: 0.00001 },
    showPly,
  ),
  measured('loss', 'Lost in each cup', (m) => m.lossPerCup, mass(1, 0.001)),
  measured('squeezedOut', 'Squeezed out', (m) => m.squeezedOut, share(0.02)),
  measured('totalLoss', 'Total loss a cup', (m) => m.totalLossPerCup, mass(1, 0.002)),
  cupsOff,
  measured('film', 'Film left inside', (m) => m.filmLeft, mass(1, 0.0005)),
  measured('shop', 'Shop, before the work', ({ build }) => build.shopTemperature, heat),
  measured('wetOut', 'Wet-out', ({ build }) => wholeMinutes(build.wetOutTime), work),
  measured('wrap', 'Wrap', ({ build }) => wholeMinutes(build.wrapTime), work),
  measured('peak', 'Hottest in the oven', (m) => m.peak, heat),
  measured('held', 'Held at', (m) => m.held, { ...heat, matters: 2 }),
  measured('steepest', 'Steepest ramp', (m) => m.steepest, {
    quantity: 'rampRate',
    digits: 1,
    matters: 0.3 / 60,
  }),
  ...rated,
];

export const numberFacts: readonly NumberFact[] = facts.filter(isNumber);
