import { computed } from '@preact/signals';
import { allGood, type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import { isWoven, strengthKeys } from '#app/planning/carry/cloth-material.ts';
import type { Cloth } from '#shared/record/cloth.ts';
import type { LaminaRecord, LaminaStrengths } from '#shared/record/lamina.ts';
import { epoxy } from '#shared/reference/strengths.ts';
import { formatNumber } from '#shared/units/format.ts';
import { figureOf, type LaminaKey, laminaFields, stiffnessKeys } from './lamina-fields.ts';

/** What a cloth's fibers do in epoxy, while it is written down. */
export interface LaminaDraft {
  keys: readonly LaminaKey[];
  inputs: ReadonlyMap<LaminaKey, QuantityInput>;
}

type Bare = Pick<LaminaDraft, 'inputs'>;

const isEmpty = ({ inputs }: Bare, key: LaminaKey) => (inputs.get(key)?.text.value.trim() ?? '') === '';
const figureIn = ({ inputs }: Bare, key: LaminaKey) => inputs.get(key)?.si.value;
const isOneOf = <K extends LaminaKey>(keys: readonly K[], key: LaminaKey): key is K =>
  keys.some((known) => known === key);

/** A group is whole or it is not there at all. */
function missing(draft: Bare, keys: readonly LaminaKey[], key: LaminaKey): string | undefined {
  if (!isEmpty(draft, key)) return undefined;
  const some = (group: readonly LaminaKey[]) => group.some((k) => !isEmpty(draft, k));
  if (isOneOf(stiffnessKeys, key) && some(keys)) {
    return 'Write this too, or leave everything empty: stiffness and its fiber volume are known together or not at all.';
  }
  if (isOneOf(strengthKeys, key) && some(strengthKeys)) {
    return 'Write this too, or leave all five strengths empty: then only stiffness is reckoned.';
  }
  return undefined;
}

/** Beyond it a material would give out energy: |nu12| < sqrt(E1/E2), with what its waves leave of E1. */
function poisson(draft: Bare): string | undefined {
  const [nu, e1, e2] = (['nu12', 'e1', 'e2'] as const).map((key) => figureIn(draft, key));
  if (nu === undefined || e1 === undefined || e2 === undefined) return undefined;
  const limit = Math.sqrt((e1 * (figureIn(draft, 'crimp') ?? 1)) / e2);
  if (Math.abs(nu) < limit) return undefined;
  const least = formatNumber(Math.floor(limit * 1000) / 1000, 3);
  return `With this E1 and E2 it lies below ${least}: check it, and whether along and across are mixed up.`;
}

function softerThanResin(draft: Bare): string | undefined {
  const [e1, share] = [figureIn(draft, 'e1'), figureIn(draft, 'fiberVolumeFraction')];
  if (e1 === undefined || share === undefined || e1 > (1 - share) * epoxy.e) return undefined;
  return 'The epoxy in it alone would be as stiff: check the figure and its unit.';
}

function together(draft: Bare, keys: readonly LaminaKey[], key: LaminaKey): string | undefined {
  if (key === 'nu12') return missing(draft, keys, key) ?? poisson(draft);
  if (key === 'e1') return missing(draft, keys, key) ?? softerThanResin(draft);
  return missing(draft, keys, key);
}

export function laminaDraft(cloth: Cloth): LaminaDraft {
  const keys: LaminaKey[] = [
    ...stiffnessKeys,
    ...(isWoven(cloth) ? ['crimp' as const] : []),
    ...strengthKeys,
  ];
  const plain = new Map(
    keys.map((key) => [key, quantityInput(figureOf(cloth.lamina, key), laminaFields[key].options)]),
  );
  const inputs = new Map(
    [...plain].map(([key, input]) => [
      key,
      {
        ...input,
        problem: computed(() => input.problem.value ?? together({ inputs: plain }, keys, key)),
      },
    ]),
  );
  return { keys, inputs };
}

/** As if all of it had been typed. */
export function takeOver({ inputs }: LaminaDraft, lamina: LaminaRecord): void {
  for (const [key, input] of inputs) input.set(figureOf(lamina, key));
}

export const isAllEmpty = (draft: LaminaDraft): boolean => draft.keys.every((key) => isEmpty(draft, key));

/** Shows every problem; true when there is none. */
export const isGoodLamina = ({ inputs }: LaminaDraft): boolean => allGood([...inputs.values()]);

function all<K extends LaminaKey>(draft: LaminaDraft, keys: readonly K[]): Record<K, number> | undefined {
  const found = keys.map((key) => [key, figureIn(draft, key)] as const);
  return found.every(([, value]) => value !== undefined)
    ? (Object.fromEntries(found) as Record<K, number>)
    : undefined;
}

/** The cloth with these figures; nothing typed takes its own away. */
export function clothWith(draft: LaminaDraft, cloth: Cloth): Cloth {
  const { lamina: before, ...rest } = cloth;
  const stiffness = all(draft, stiffnessKeys);
  if (!stiffness) return rest;
  const { strengths: _, crimp: __, ...kept } = before ?? {};
  const strengths: LaminaStrengths | undefined = all(draft, strengthKeys);
  const crimp = figureIn(draft, 'crimp');
  const lamina: LaminaRecord = {
    ...kept,
    ...stiffness,
    ...(strengths && { strengths }),
    ...(crimp !== undefined && { crimp }),
  };
  return { ...rest, lamina };
}
