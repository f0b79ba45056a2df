import type { ClockTone } from './clock-words.ts';

const shapes: Record<ClockTone, string> = {
  plain: 'M13 2a11 11 0 1 0 .01 0Z',
  amber: 'M13 2 25 24H1Z',
  stop: 'M8 1h10l7 7v10l-7 7H8l-7-7V8Z',
  done: 'M2 2h22v22H2ZM7 13l4 5 8-11',
};

/** A state has a shape of its own: a ring runs, a triangle warns, an eight-sided one stops, a ticked box is done. */
export function ToneShape({ tone }: { tone: ClockTone }) {
  return (
    <svg class="tone-shape" viewBox="0 0 26 26" aria-hidden="true">
      <path d={shapes[tone]} />
    </svg>
  );
}
