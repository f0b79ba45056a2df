import { type Signal, signal } from '@preact/signals';
import { type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import { theStore } from '#app/state/shop.ts';
import type { OvenLoadHeader } from '#shared/record/oven-load.ts';

/** How far off the sensors and the oven are, while a load is set up. Empty counts as nothing. */
export interface ErrorDraft {
  /** By what it is for: 'air', 'element', or the build whose tube it sits on. */
  offsets: Map<string, QuantityInput>;
  unevenness: QuantityInput;
  /** A sensor in view of the element too. */
  element: Signal<boolean>;
  /** The number of the load whose figures are proposed. */
  from: Signal<number | undefined>;
  /** Of its part sensors, in their order, K */
  partOffsets: Signal<readonly (number | undefined)[]>;
}

/** A sensor further off than this is broken, K */
const worst = 20;
const difference = { quantity: 'temperatureDifference', optional: true } as const;

export const errorDraft = (): ErrorDraft => ({
  offsets: new Map(),
  unevenness: quantityInput(undefined, { ...difference, min: 0, max: 60 }),
  element: signal(false),
  from: signal(undefined),
  partOffsets: signal([]),
});

/** The field of one sensor; made when it is first asked for. */
export function offsetInput({ offsets }: ErrorDraft, key: string, proposed?: number): QuantityInput {
  const known = offsets.get(key);
  if (known) return known;
  const made = quantityInput(proposed, { ...difference, min: -worst, max: worst });
  offsets.set(key, made);
  return made;
}

/** Fills in what was said of sensors and oven at the last load, where nothing was typed yet. */
export function proposeErrors(draft: ErrorDraft, last: OvenLoadHeader): void {
  draft.from.value = last.number;
  const fill = (input: QuantityInput, si: number | undefined) => {
    if (si !== undefined && input.text.value === '') input.set(si);
  };
  const offsetOf = (sees: string) => last.channels.find((c) => c.sees === sees)?.offset;
  fill(draft.unevenness, last.unevenness);
  fill(offsetInput(draft, 'air'), offsetOf('air'));
  fill(offsetInput(draft, 'element'), offsetOf('element'));
  draft.element.value ||= last.channels.some((c) => c.sees === 'element');
  draft.partOffsets.value = last.channels.filter((c) => c.sees === 'part').map((c) => c.offset);
}

/** The header of the newest oven load on this phone. */
export async function lastOvenLoad(): Promise<OvenLoadHeader | undefined> {
  const { summaries } = await theStore().summaries({ of: 'ovenLoad', limit: 1 });
  const [newest] = summaries;
  if (!newest) return undefined;
  const found = await theStore().header(newest.subject);
  return found?.ok && found.value.record === 'ovenLoad' ? found.value : undefined;
}

/** What is kept of it, SI; undefined where nothing was said. */
export const offsetsOf = ({ offsets }: ErrorDraft): ReadonlyMap<string, number | undefined> =>
  new Map([...offsets].map(([key, input]) => [key, input.si.value]));
