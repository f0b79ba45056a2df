import { describe, expect, it } from 'vitest';
import { doneLines } from '#app/curing/oven/done-three.ts';
import { ovenResults } from '#app/curing/oven/oven-results.ts';
import { stillHot } from '#app/curing/oven/oven-words.ts';
import { build, load, type Read, slow } from './oven-loads.ts';

const plain = (text: string | undefined) => text?.replace(/\s/g, ' ');
const hot = (read: Read) => {
  const state = load(read, { off: 205 });
  return plain(stillHot(state, ovenResults(state, [{ resin: slow }])));
};

describe('taking a load out', () => {
  it('is hardly meant while the hottest part reads more than a hand bears', () => {
    expect(hot({ boom: [[210, 66]] })).toBe('still 66 °C');
    expect(hot({ boom: [[210, 40]], sprit: [[210, 41]] })).toBe('still 41 °C');
    expect(hot({ boom: [[210, 40]] })).toBeUndefined();
  });

  it('nor when nobody read it since it went off, however cool it was then', () => {
    expect(hot({ boom: [[200, 66]] })).toMatch(/^last read 66 °C at /);
    expect(hot({ boom: [[200, 30]] })).toMatch(/^last read 30 °C at /);
    expect(hot({})).toBe('never read');
  });
});

describe('the samples of a load', () => {
  const felt = (outcome: string) => [{ kind: 'check', what: 'hardness', outcome }] as never;
  const boom = build();
  const sprit = (outcome?: string) =>
    build({ id: 'sprit', name: 'Sprit', number: 1 }, outcome ? felt(outcome) : []);
  const samples = (...states: ReturnType<typeof build>[]) => {
    const state = load({}, {});
    const results = ovenResults(state, [{ resin: slow }]);
    const inside = states.map((s) => ({ state: s, round: 1 }));
    const line = doneLines(results, state, inside)[2];
    return { says: plain(line?.says), met: line?.met };
  };

  it('say whose is not felt yet when there are several tubes', () => {
    expect(samples(boom)).toEqual({ says: 'not felt yet', met: false });
    expect(samples(boom, sprit())).toEqual({
      says: 'Boom no. 2 and Sprit no. 1 not felt yet',
      met: false,
    });
    expect(samples(boom, sprit('hard'))).toEqual({ says: '1 of 2, Boom no. 2 not felt yet', met: false });
  });

  it('are met when every one is hard', () => {
    expect(samples(sprit('hard'))).toEqual({ says: '1 of 1', met: true });
    expect(samples(boom, sprit('soft')).met).toBe(false);
  });
});
