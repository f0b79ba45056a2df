import { describe, expect, it } from 'vitest';
import { onScale, type ReadingContext, readScale } from '#app/laying-up/mix/scale-reading.ts';

const context: ReadingContext = { system: 'metric', step: 0.0001, before: 0.0893, holds: 0.2 };

describe('reading the scale', () => {
  it('takes what was in the cup before off the running total', () => {
    const read = readScale('116.1', context);
    expect(read).toMatchObject({ kind: 'read', typed: '116.1 g' });
    expect(read.kind === 'read' && read.mass).toBeCloseTo(0.0268, 9);
  });

  it('takes the reading for the pour itself when the scale was zeroed', () => {
    const read = readScale('26.8', { ...context, before: 0 });
    expect(read.kind === 'read' && read.mass).toBeCloseTo(0.0268, 9);
  });

  it('reads ounces in an inch-pound shop and keeps them as typed', () => {
    const read = readScale('4.1', { ...context, system: 'inchPound' });
    expect(read).toMatchObject({ kind: 'read', typed: '4.1 oz' });
    expect(read.kind === 'read' && read.reading).toBeCloseTo(0.116233, 6);
  });

  it('says nothing before anything is typed', () => {
    expect(readScale('', context)).toEqual({ kind: 'nothing' });
    expect(readScale('  ', context)).toEqual({ kind: 'nothing' });
  });

  it.each([
    ['0', /Zero/],
    ['0.', /Zero|not a number/],
    ['89.3', /89\.3.g was in the cup already/],
    ['50', /89\.3.g was in the cup already/],
    ['10000', /may hold 200\.0.g.*check the figure/],
    ['1161', /far more: check the figure/],
  ])('says in one sentence what is wrong with %s', (text, says) => {
    const read = readScale(text, context);
    expect(read.kind).toBe('wrong');
    expect(read.kind === 'wrong' && read.says).toMatch(says);
    expect(read.kind === 'wrong' && read.says.match(/\. /)).toBeFalsy();
  });
});

describe('a mass as the scale shows it', () => {
  it('has the decimals of the step', () => {
    expect(onScale(0.11607, { system: 'metric', step: 0.0001 })).toBe('116.1\u00a0g');
    expect(onScale(0.11607, { system: 'metric', step: 0.00001 })).toBe('116.07\u00a0g');
    expect(onScale(0.11607, { system: 'metric', step: 0.001 })).toBe('116\u00a0g');
    expect(onScale(0.11607, { system: 'inchPound', step: 0.0001 })).toBe('4.094\u00a0oz');
  });
});
