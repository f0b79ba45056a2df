import { describe, expect, it } from 'vitest';
import { orderProblem } from '#app/made/record/order-problem.ts';
import { holding } from '#shared/record/journal.ts';
import { buildOf, cupOf } from './shop-of.ts';

const state = buildOf([...cupOf('a', 1, 30), { minute: 40, kind: 'cupEmpty', cup: 'a' }]);
const facts = holding(state.facts).map((f) => f.entry);
const cup = state.cups[0];
const hardenerAt = cup?.hardenerAt ?? 0;
const resin = facts.find((e) => e.kind === 'pour' && e.part === 'resin');
const contact = facts.find((e) => e.kind === 'clockStarted');
const empty = facts.find((e) => e.kind === 'cupEmpty');

describe('a corrected time within a cup', () => {
  it('has all the lines that it is about', () => {
    expect([resin, contact, empty].every(Boolean)).toBe(true);
    expect(hardenerAt).toBeGreaterThan(0);
  });

  it('is refused when hardener would go in before the resin', () => {
    if (!contact || !resin) throw new Error('no cup');
    expect(orderProblem(state, contact, resin.happenedAt - 1000)).toMatch(
      /hardener cannot have gone in before/,
    );
    expect(orderProblem(state, contact, resin.happenedAt + 1000)).toBeUndefined();
  });

  it('is refused when resin would be poured after the hardener', () => {
    if (!resin) throw new Error('no resin');
    expect(orderProblem(state, resin, hardenerAt + 1000)).toMatch(/Hardener went in/);
    expect(orderProblem(state, resin, hardenerAt - 1000)).toBeUndefined();
  });

  it('is refused when the cup would be empty before the hardener went in', () => {
    if (!empty) throw new Error('no end');
    expect(orderProblem(state, empty, hardenerAt - 1000)).toMatch(/cannot have been empty/);
    expect(orderProblem(state, empty, hardenerAt + 1000)).toBeUndefined();
  });
});
