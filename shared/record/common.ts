import * as z from 'zod/mini';

// The Content-Security-Policy forbids eval; without this every first parse would try it and be reported.
z.config({ jitless: true });

/**
 * Made when it is first asked for, and kept. What is stored takes a thousand schemas to say: made all at once as the
 * app starts they would be a good part of the wait for a first screen that may need none, so larger ones are `z.lazy`.
 */
export function once<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

/** Identifiers sort by the time they were made (UUID version 7). */
export const id = z.string().check(z.minLength(1), z.maxLength(80));

/** Time of day: milliseconds since 1970-01-01 UTC. */
export const stamp = z.number().check(z.gte(0), z.lte(8.64e15));

/** Minutes east of UTC when it happened, so that a time is shown as it was lived. */
export const zone = z.number().check(z.gte(-1440), z.lte(1440));

export const positive = z.number().check(z.gt(0), z.lt(1e12));
export const nonNegative = z.number().check(z.gte(0), z.lt(1e12));
export const share = z.number().check(z.gte(0), z.lte(1));
export const kelvin = z.number().check(z.gt(0), z.lt(3000));
export const text = z.string().check(z.maxLength(20_000));
export const name = z.string().check(z.minLength(1), z.maxLength(200));

/** What the builder typed, kept beside the number it became: one text, or one for each field. */
export const typed = z.union([z.string(), z.record(z.string(), z.string())]);
