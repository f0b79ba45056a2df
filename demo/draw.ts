/**
 * Numbers between two others that look like a builder's and are the same every time.
 * Mulberry32, public domain, from memory.
 */
export function drawing(seed: number): (from: number, to: number) => number {
  let state = seed >>> 0;
  return (from, to) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t = (t + Math.imul(t ^ (t >>> 7), t | 61)) ^ t;
    return from + (((t ^ (t >>> 14)) >>> 0) / 2 ** 32) * (to - from);
  };
}

/** To a whole step, without the last digits that binary fractions leave. */
export const rounded = (value: number, step: number) => Number((Math.round(value / step) * step).toFixed(6));

/** A mass as a scale of 0.1 g shows it, and as it is typed. */
export function onScale(mass: number): { mass: number; typed: string } {
  const tenths = Math.round(mass * 10_000);
  return { mass: tenths / 10_000, typed: `${(tenths / 10).toFixed(1)} g` };
}

/** A temperature as a meter of whole degrees shows it. */
export function onMeter(kelvin: number): { temperature: number; typed: string } {
  const celsius = Math.round(kelvin - 273.15);
  return { temperature: Math.round(celsius * 100 + 27_315) / 100, typed: `${celsius} C` };
}
