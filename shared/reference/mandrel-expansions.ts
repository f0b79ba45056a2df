import type { Mandrel } from '#shared/record/mandrel.ts';

/**
 * How mandrels grow with heat, 1/K. Callister, Materials Science and Engineering, table B.6 (from memory): aluminum
 * 6061, steel 1020, stainless 304. Of a composite or a foam nobody knows it without a data sheet.
 */
export const mandrelExpansions = {
  aluminum: 23.6e-6,
  steel: 11.7e-6,
  stainless: 17.2e-6,
  composite: undefined,
  foam: undefined,
  other: undefined,
} as const satisfies Record<Mandrel['material'], number | undefined>;

export const expansionSource = 'Callister, Materials Science and Engineering, table B.6, from memory';
