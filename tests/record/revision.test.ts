import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heads } from '#shared/record/revision.ts';

const rev = (id: string, ...parents: string[]) => ({ id, parents });
const ids = (list: { id: string }[]) => list.map((r) => r.id);

describe('the heads of a document', () => {
  it('are its only revision', () => {
    expect(ids(heads([rev('a')]))).toEqual(['a']);
    expect(heads([])).toEqual([]);
  });

  it('are the newest of a line of revisions, in whatever order they come', () => {
    expect(ids(heads([rev('c', 'b'), rev('a'), rev('b', 'a')]))).toEqual(['c']);
  });

  it('are both when two phones changed it since they last agreed', () => {
    expect(ids(heads([rev('c', 'a'), rev('a'), rev('b', 'a')]))).toEqual(['b', 'c']);
  });

  it('are one again after the builder chose', () => {
    expect(ids(heads([rev('a'), rev('b', 'a'), rev('c', 'a'), rev('d', 'b', 'c')]))).toEqual(['d']);
  });

  it('stay two when one phone went on after a choice it had not heard of', () => {
    expect(ids(heads([rev('a'), rev('b', 'a'), rev('c', 'a'), rev('d', 'b', 'c'), rev('e', 'c')]))).toEqual([
      'd',
      'e',
    ]);
  });

  it('count a revision once when it comes in twice', () => {
    expect(ids(heads([rev('a'), rev('a')]))).toEqual(['a']);
  });

  it('hold when a parent has not come over yet', () => {
    expect(ids(heads([rev('b', 'lost')]))).toEqual(['b']);
  });

  it('are the same for any order and duplication, never none, and nobody was made from them', () => {
    // Each revision may be made from any before it.
    const history = fc
      .array(fc.array(fc.nat(20), { maxLength: 2 }), { minLength: 1, maxLength: 12 })
      .map((list) =>
        list.map((from, i) =>
          rev(
            `r${String(i).padStart(2, '0')}`,
            ...(i === 0 ? [] : from).map((n) => `r${String(n % i).padStart(2, '0')}`),
          ),
        ),
      );
    const twice = history.chain((all) =>
      fc.tuple(fc.constant(all), fc.shuffledSubarray([...all, ...all], { minLength: 2 * all.length })),
    );
    fc.assert(
      fc.property(twice, ([all, again]) => {
        const found = ids(heads(all));
        expect(ids(heads(again))).toEqual(found);
        expect(found.length).toBeGreaterThan(0);
        expect(all.flatMap((r) => r.parents).some((p) => found.includes(p))).toBe(false);
      }),
    );
  });
});
