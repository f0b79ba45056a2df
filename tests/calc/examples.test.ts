import { readdirSync, readFileSync } from 'node:fs';
import { runInNewContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import * as calc from '#calc';

// Every example in a docstring is a question, a call and its answer. The answers are to four figures.
const folder = new URL('../../src/calc/', import.meta.url);
const FIGURES = 5e-4;

type Example = { file: string; question: string; call: string; answer: string };

function examplesIn(file: string): Example[] {
  const source = readFileSync(new URL(file, folder), 'utf8');
  return [...source.matchAll(/@example\n([\s\S]*?)\*\//g)].map(([, block = '']) => {
    const lines = block.split('\n').map((line) => line.replace(/^ \* ?/, ''));
    const at = lines.findIndex((line) => line.startsWith('// => '));
    return {
      file,
      question: (lines[0] ?? '').replace('// ', ''),
      call: lines.slice(1, at).join('\n'),
      answer: (lines[at] ?? '').replace('// => ', ''),
    };
  });
}

function expectClose(got: unknown, wanted: unknown): void {
  if (typeof wanted === 'number') {
    expect(typeof got).toBe('number');
    expect(Math.abs(Number(got) - wanted)).toBeLessThanOrEqual(Math.abs(wanted) * FIGURES);
    return;
  }
  if (typeof wanted === 'string') {
    expect(got).toBe(wanted);
    return;
  }
  const pairs = Object.entries(wanted as object);
  expect(Object.keys(got as object)).toEqual(pairs.map(([key]) => key));
  for (const [key, value] of pairs) expectClose((got as Record<string, unknown>)[key], value);
}

const examples = readdirSync(folder, { recursive: true })
  .map(String)
  .filter((name) => name.endsWith('.ts'))
  .flatMap(examplesIn);

describe('the examples in the docstrings', () => {
  it.each(examples)('$file: $question', ({ question, call, answer }) => {
    expect(question).toMatch(/\?$/);
    expectClose(runInNewContext(call, { ...calc }), runInNewContext(`(${answer})`));
  });

  it('leave out no function', () => {
    const shown = examples.map(({ call }) => call.slice(0, call.indexOf('(')));
    expect([...shown].sort()).toEqual([...Object.keys(calc)].sort());
  });
});
