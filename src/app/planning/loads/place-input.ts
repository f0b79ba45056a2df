import { computed } from '@preact/signals';
import {
  type QuantityInput,
  type QuantityOptions,
  quantityInput,
  readQuantity,
} from '#app/parts/quantity-input.ts';
import { place } from './load-words.ts';

/** Rounding of a length shown in inches, m */
const hair = 1e-5;

/** A field that says in words of its own what lies out of its bounds. */
export function boundedInput(
  initial: number | undefined,
  options: QuantityOptions,
  says: () => string,
): QuantityInput {
  const input = quantityInput(initial, options);
  const problem = computed(() => {
    const own = input.problem.value;
    if (own === undefined) return undefined;
    const read = readQuantity(input.text.value, options);
    return !read.ok && /^(tooBig|tooSmall|negative|zero)$/.test(read.reason) ? says() : own;
  });
  return { ...input, problem };
}

/** A place along a tube of this length. */
export function placeInput(initial: number | undefined, length: number): QuantityInput {
  return boundedInput(
    initial,
    { quantity: 'length', min: 0, max: length + hair },
    () => `That is off the tube, which goes from 0 to ${place(length)}: write a place between.`,
  );
}

/** Onto the tube, where rounding took it a hair past the end. */
export const onTube = (m: number, length: number): number => Math.min(m, length);
