import { describe, expect, it } from 'vitest';
import { quantityInput } from '#app/parts/quantity-input.ts';
import { bookGoal } from '#app/planning/making/by-the-book.tsx';
import {
  keptOrigins,
  type LearnedInputs,
  originsOf,
  standing,
  type Taken,
} from '#app/planning/making/origins.ts';
import { learnable, planBody, type ResinGoal } from '#shared/record/plan.ts';
import { lowerMast } from '../browser/support/walled.ts';

const inputs = (): LearnedInputs => ({
  fiberVolume: quantityInput(0.35, { quantity: 'fraction' }),
  lossPerCup: quantityInput(0.0119123, { quantity: 'mass' }),
  squeezeOut: quantityInput(0.1, { quantity: 'fraction' }),
  workingRate: quantityInput(undefined, { quantity: 'massRate', optional: true }),
  plyThickness: quantityInput(undefined, { quantity: 'thickness', optional: true }),
});
const shops = (value: number): Taken => ({ of: 'shop', builds: 7, value });

describe('whose figure a plan counts with', () => {
  it('is the shop’s as long as it stands, and kept with how many builds it came from', () => {
    const held = standing({ lossPerCup: shops(0.0119123) }, inputs());
    expect(keptOrigins(held)).toEqual({ from: { lossPerCup: { of: 'shop', builds: 7 } } });
  });

  it('is the builder’s own once it is typed over', () => {
    const own = inputs();
    own.lossPerCup.text.value = '12.5 g';
    expect(keptOrigins(standing({ lossPerCup: shops(0.0119123) }, own))).toEqual({});
  });

  it('is the book’s where the field was left empty for it', () => {
    const held = standing({ workingRate: { of: 'book', value: undefined } }, inputs());
    expect(keptOrigins(held)).toEqual({ from: { workingRate: { of: 'book' } } });
  });

  it('comes back with the plan it was saved in', () => {
    const goal: ResinGoal = {
      ...lowerMast.goal,
      lossPerCup: 0.0119123,
      from: { lossPerCup: { of: 'shop', builds: 7 } },
    };
    expect(planBody.parse({ ...lowerMast, goal }).goal).toEqual(goal);
    const own = inputs();
    expect(keptOrigins(standing(originsOf(goal, own).value, own))).toEqual({ from: goal.from });
  });
});

describe('the book', () => {
  it('stands in for what is the shop’s, and leaves alone what was typed', () => {
    const goal = { fiberVolumeFraction: 0.4, lossPerCup: 0.012, squeezeOut: 0.2, workingRate: 0.0002 };
    expect(bookGoal(goal, new Set(['lossPerCup', 'workingRate']))).toEqual({
      fiberVolumeFraction: 0.4,
      lossPerCup: 0.015,
      squeezeOut: 0.2,
    });
    expect(bookGoal(goal, new Set(learnable))).toEqual({
      fiberVolumeFraction: 0.35,
      lossPerCup: 0.015,
      squeezeOut: 0.1,
    });
  });
});
