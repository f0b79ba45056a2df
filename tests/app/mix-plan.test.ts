import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eachOf, mixPlan, type PlanInput } from '#app/laying-up/mix/mix-plan.ts';
import { recipe } from '#app/laying-up/mix/recipe.ts';
import type { CupState } from '#shared/record/cup-state.ts';
import { anyCloth, cup, slow } from './mix-cups.ts';

const job: PlanInput = {
  clothMass: 0.15,
  cloth: anyCloth,
  resin: slow,
  goal: { fiberVolumeFraction: 0.35, lossPerCup: 0.014, squeezeOut: 0.1 },
  cups: [],
  round: 1,
};

/** A cup mixed of so much, dead on its ratio. */
function mixed(number: number, of: number, total: number, change: Partial<CupState> = {}): CupState {
  const { resin, hardener } = eachOf(total, 0.3);
  const startedAt = number * 1000;
  return cup({
    cup: `cup-${number}`,
    number,
    of,
    startedAt,
    resin,
    hardener,
    hardenerAt: startedAt,
    ...change,
  });
}

describe('what is left to mix', () => {
  const first = mixPlan(job);

  it('is the whole recipe before any cup is started', () => {
    const whole = recipe(job);
    expect(first.cups).toBe(whole.cups);
    expect(first.total).toBeCloseTo(whole.total, 9);
    expect(first.left).toBeCloseTo(whole.total, 9);
    expect(first.each.resin).toBeCloseTo(whole.each.resin, 9);
    expect(first.each.hardener).toBeCloseTo(whole.each.hardener, 9);
    expect(first.next).toEqual({ number: 1, of: whole.cups });
    expect(first.cups).toBeGreaterThan(2);
  });

  it('goes on in even cups, each as big as before, when a cup came out as planned', () => {
    const next = mixPlan({ ...job, cups: [mixed(1, first.cups, first.each.total)] });
    expect(next.cups).toBe(first.cups - 1);
    expect(next.each.total).toBeCloseTo(first.each.total, 9);
    expect(next.total).toBeCloseTo(first.total, 9);
    expect(next.next).toEqual({ number: 2, of: first.cups });
  });

  it('spreads what a cup came out over or short on the cups that remain', () => {
    const over = mixPlan({ ...job, cups: [mixed(1, first.cups, first.each.total + 0.006)] });
    expect(over.left).toBeCloseTo(first.left - first.each.total - 0.006, 9);
    const short = mixPlan({ ...job, cups: [mixed(1, first.cups, first.each.total - 0.006)] });
    expect(short.left).toBeCloseTo(first.left - first.each.total + 0.006, 9);
  });

  it('is mixed again when a cup is thrown out, under a number of its own', () => {
    const thrown = mixed(1, first.cups, first.each.total, { discardedAt: 5000 });
    const next = mixPlan({ ...job, cups: [thrown] });
    expect(next.left).toBeCloseTo(first.left, 9);
    expect(next.cups).toBe(first.cups);
    expect(next.mixed).toBe(0);
    expect(next.next).toEqual({ number: 2, of: first.cups + 1 });
  });

  it('is nothing when every cup is mixed, though a few grams are missing', () => {
    const cups = Array.from({ length: first.cups }, (_, i) =>
      mixed(i + 1, first.cups, first.each.total - 0.001),
    );
    expect(mixPlan({ ...job, cups })).toMatchObject({ left: 0, cups: 0 });
  });

  it('is one more cup when the last one was recorded half full', () => {
    const cups = Array.from({ length: first.cups }, (_, i) =>
      mixed(i + 1, first.cups, i === 0 ? first.each.total / 2 : first.each.total),
    );
    expect(mixPlan({ ...job, cups })).toMatchObject({ cups: 1 });
  });

  it('does not split the last cup in two because one before it was a gram short', () => {
    const full = { ...job, goal: { ...job.goal, lossPerCup: 0, squeezeOut: 0 } };
    const kept = recipe(full).kept;
    const twoFull = { ...full, resin: { ...slow, largestCup: kept / 2 } };
    expect(mixPlan(twoFull).cups).toBe(2);
    const next = mixPlan({ ...twoFull, cups: [mixed(1, 2, kept / 2 - 0.001)] });
    expect(next.cups).toBe(1);
    expect(next.each.total).toBeLessThanOrEqual(kept / 2);
  });

  it('counts a cup that is being weighed by what it will come to', () => {
    const started = cup({ of: first.cups, wanted: eachOf(first.each.total, 0.3) });
    expect(mixPlan({ ...job, cups: [started] }).cups).toBe(first.cups - 1);
    const resinOver = cup({ of: first.cups, resin: first.each.resin + 0.01 });
    expect(mixPlan({ ...job, cups: [resinOver] }).mixed).toBeCloseTo((first.each.resin + 0.01) * 1.3, 9);
  });

  it('takes off what earlier rounds mixed, and numbers the cups of this round from one', () => {
    const next = mixPlan({ ...job, round: 2, cups: [mixed(1, first.cups, first.each.total)] });
    expect(next.left).toBeCloseTo(first.left - first.each.total, 9);
    expect(next.next.number).toBe(1);
  });
});

describe('how many cups', () => {
  it('follows the wish of the builder, with the loss of every cup added', () => {
    const first = mixPlan(job);
    const more = mixPlan({ ...job, wish: first.cups + 1 });
    expect(more.cups).toBe(first.cups + 1);
    expect(more.left).toBeCloseTo(first.left + 0.014, 9);
  });

  it('is never so few that a cup is bigger than the resin allows, nor more than a bench bears', () => {
    const first = mixPlan(job);
    expect(mixPlan({ ...job, wish: 1 }).cups).toBe(first.fewest);
    expect(mixPlan({ ...job, wish: 500 }).cups).toBe(first.most);
  });

  it('keeps the number agreed on when the first of them was started', () => {
    const more = mixPlan({ ...job, wish: mixPlan(job).cups + 2 });
    const next = mixPlan({ ...job, cups: [mixed(1, more.cups, more.each.total)] });
    expect(next.cups).toBe(more.cups - 1);
  });

  it('gives the part what it keeps, whatever the cups before came to', () => {
    const size = fc.double({ min: 0.02, max: 0.1, noNaN: true });
    fc.assert(
      fc.property(fc.array(size, { maxLength: 4 }), (sizes) => {
        const cups = sizes.map((total, i) => mixed(i + 1, sizes.length, total));
        const plan = mixPlan({ ...job, cups });
        const { each, cups: n, kept } = plan;
        expect(each.total).toBeLessThanOrEqual(slow.largestCup);
        const applied = sizes.reduce((sum, s) => sum + s - 0.014, 0) + n * (each.total - 0.014);
        if (n > 0) expect(Math.abs(applied * 0.9 - kept)).toBeLessThan(0.03 * kept);
        else expect(applied * 0.9).toBeGreaterThan(0.94 * kept);
      }),
    );
  });
});

describe('a job that no cups can do', () => {
  it('throws the field that stands in the way', () => {
    const greedy = { ...job, goal: { ...job.goal, lossPerCup: 0.1 } };
    expect(() => mixPlan(greedy)).toThrow(/^lossPerCup/);
  });
});
