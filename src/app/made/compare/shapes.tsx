import type { Made } from '#app/made/learned/made-facts.ts';
import { type Kind, kinds } from './tellings.ts';

/** Told apart by shape first; every shape has a color of its own besides. */
const paths = [
  'M0-7A7 7 0 1 1 0 7A7 7 0 1 1 0-7Z',
  'M-6.5-6.5H6.5V6.5H-6.5Z',
  'M0-8 8 6.5H-8Z',
  'M0-9 9 0 0 9-9 0Z',
  'M-3-8H3V-3H8V3H3V8H-3V3H-8V-3H-3Z',
  'M0 8-8-6.5H8Z',
] as const;

export interface ShapeOf {
  path: string;
  /** Which of the colors. */
  color: number;
  /** The second time round the shapes are hollow. */
  hollow: boolean;
}

const noneNamed = 'None named';

export const kindOf = (made: Made, by: Kind) => kinds[by].of(made) ?? noneNamed;

/** One shape each, in the order of the builds. */
export function shapesFor(made: readonly Made[], by: Kind): Map<string, ShapeOf> {
  const names = [...new Set(made.map((m) => kindOf(m, by)))];
  return new Map(
    names.map((name, i) => {
      const color = i % paths.length;
      return [name, { path: paths[color] ?? paths[0], color, hollow: i >= paths.length }];
    }),
  );
}

export function Shape({ shape: { path, color, hollow } }: { shape: ShapeOf }) {
  return <path class={`shape shape-${color}${hollow ? ' shape-hollow' : ''}`} d={path} />;
}
