import { beforeEach, describe, expect, it } from 'vitest';
import { bandOf, splitPostcure } from '#app/curing/cure/bands.ts';
import { cureIsGood } from '#app/curing/cure/check-cure.ts';
import { cureDraft, scheduleOf } from '#app/curing/cure/cure-draft.ts';
import {
  addPostcure,
  addStage,
  moveStage,
  removeStage,
  takeStages,
  undo,
} from '#app/curing/cure/cure-edits.ts';
import { rampCautions } from '#app/curing/cure/ramp-cautions.ts';
import { tapeSays } from '#app/curing/cure/tape-words.ts';
import { askUnit, expectedFor } from '#app/curing/cure/unit-question.ts';
import { whatFits } from '#app/curing/cure/what-fits.ts';
import { brokenBy } from '#app/curing/oven/oven-limits.ts';
import { corners } from '#app/curing/oven/oven-schedule.ts';
import { quantityInput } from '#app/parts/quantity-input.ts';
import { steppedBy } from '#app/parts/stepped-field.tsx';
import { settings } from '#app/state/settings.ts';
import { cureTimeUsed } from '#calc';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import { starterResins } from '#shared/reference/starter-resins.ts';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';
import { starterTapes } from '#shared/reference/starter-tapes.ts';
import { celsius, schedule } from './oven-loads.ts';

const slow = starterResins['starter-resin-laminating-slow'];
const kinds = (of: CureSchedule | undefined) => of?.stages.map((s) => s.kind);
const units = (system: 'metric' | 'inchPound') => {
  settings.value = { ...settings.value, units: system };
};

beforeEach(() => units('metric'));

describe('a schedule being written', () => {
  it('stays the same object until something of it is changed', () => {
    expect(scheduleOf(cureDraft(schedule))).toBe(schedule);
  });

  it('takes a stage after the open one, moves it, removes it, and takes that back', () => {
    const draft = cureDraft(schedule);
    draft.chosen.value = draft.stages.value[0]?.key;
    addStage(draft, 'hold');
    expect(kinds(scheduleOf(draft))).toEqual(['ramp', 'hold', 'hold', 'cool']);
    const added = draft.chosen.value ?? 0;
    moveStage(draft, added, 1);
    expect(draft.stages.value[2]?.key).toBe(added);
    moveStage(draft, added, -1);
    moveStage(draft, added, -1);
    expect(draft.stages.value[0]?.key).toBe(added);
    moveStage(draft, added, -1);
    expect(draft.stages.value[0]?.key).toBe(added);
    removeStage(draft, added);
    expect(kinds(scheduleOf(draft))).toEqual(['ramp', 'hold', 'cool']);
    undo(draft);
    expect(kinds(scheduleOf(draft))).toEqual(['hold', 'ramp', 'hold', 'cool']);
  });

  it('keeps what was typed wrong, opens its stage, and is no schedule as long as it stands', () => {
    const draft = cureDraft(schedule);
    const hold = draft.stages.value[1];
    if (!hold) throw new Error('no hold');
    hold.lasts.text.value = '12 apples';
    expect(scheduleOf(draft)).toBeUndefined();
    expect(cureIsGood(draft, slow)).toBe(false);
    expect(draft.chosen.value).toBe(hold.key);
    expect(hold.lasts.text.value).toBe('12 apples');
  });

  it('counts its hold in a band that goes along with the hottest hold, and keeps a band of its own otherwise', () => {
    const own = { ...schedule, holdLow: celsius(60) };
    expect(bandOf(own, own).holdLow).toBe(celsius(60));
    const draft = cureDraft(own);
    draft.stages.value[0]?.to.set(celsius(74));
    expect(scheduleOf(draft)?.holdLow).toBeCloseTo(celsius(71), 9);
    expect(scheduleOf(draft)?.holdHigh).toBeCloseTo(celsius(80), 9);
  });

  it('is read by stage: so often while ramping, so often while holding', () => {
    const draft = cureDraft(schedule);
    draft.readRamping.set(600);
    draft.readHolding.set(2400);
    expect(scheduleOf(draft)).toMatchObject({ readEvery: 2400, readRamping: 600 });
  });

  it('steps to the next whole degree of the unit it is shown in', () => {
    expect(steppedBy(celsius(66.4), 1, { quantity: 'temperature', step: 1 })).toBeCloseTo(celsius(67), 6);
    units('inchPound');
    expect(steppedBy(celsius(66), 1, { quantity: 'temperature', step: 5 })).toBeCloseTo(
      celsius(68.333333),
      5,
    );
    units('metric');
    expect(steppedBy(15 / 3600, 1, { quantity: 'rampRate', step: 5, unit: '°C/h' })).toBeCloseTo(
      20 / 3600,
      9,
    );
  });
});

describe('a postcure', () => {
  it('is added as stages: 15 degrees an hour, ten above the glass transition reached, off the mandrel', () => {
    // The glass transition ends 15 above the cure, but not above the resin's own (common practice, no source).
    const draft = cureDraft(schedule);
    addPostcure(draft, slow);
    const made = scheduleOf(draft);
    const [ramp, hold] = made?.stages.slice(3) ?? [];
    const most = Math.min(celsius(66) + 15, slow.glassTransition) + 10;
    expect(ramp).toMatchObject({ kind: 'ramp', to: expect.closeTo(Math.floor(most - 273.15) + 273.15, 6) });
    expect(ramp).toMatchObject({ rate: expect.closeTo(15 / 3600, 9), offMandrel: true });
    expect(hold).toMatchObject({ kind: 'hold', offMandrel: true });
    expect(rampCautions(made ?? schedule, slow)).toEqual([]);
  });

  it('is an oven load of its own', () => {
    const draft = cureDraft(schedule);
    addPostcure(draft, slow);
    const made = scheduleOf(draft);
    if (!made) throw new Error('no schedule');
    const { cure, postcure } = splitPostcure(made);
    expect(kinds(cure)).toEqual(['ramp', 'hold', 'cool']);
    expect(kinds(postcure)).toEqual(['ramp', 'hold', 'cool']);
    expect(postcure?.holdLow).toBeGreaterThan(cure.holdLow);
    expect(splitPostcure(schedule)).toEqual({ cure: schedule });
  });

  it('is cautioned about when it is too fast or too hot, and a wet ramp over 3 degrees a minute is', () => {
    const stages: CureSchedule['stages'] = [
      { kind: 'ramp', to: celsius(66), rate: 4 / 60 },
      { kind: 'hold', lasts: 3600 },
      { kind: 'ramp', to: celsius(100), rate: 30 / 3600, offMandrel: true },
      { kind: 'ramp', to: celsius(80), rate: 15 / 3600, offMandrel: true },
    ];
    const titles = rampCautions({ ...schedule, stages }, slow).map((c) => c.title.replace(/\s/g, ' '));
    expect(titles).toEqual([
      'Stage 1 ramps at 4 °C/min',
      'Stage 3 goes at 30 °C/h with nothing to hold the tube',
      expect.stringMatching(/^Stage 3 goes \d+ °C above where it softens now$/),
      'Stage 4 ramps down',
    ]);
  });
});

describe('what would fit', () => {
  const hotter = starterSchedules['starter-schedule-80-4'].schedule;
  const film = [{ name: 'release film', sees: 'part', highest: celsius(72.6) }] as const;

  it('is a whole degree under the limit, held so long that no less cure time is used', () => {
    const fit = whatFits(hotter, brokenBy(hotter, film), [slow]);
    if (!fit) throw new Error('nothing fits');
    expect(fit.at).toBeCloseTo(celsius(72), 6);
    expect(brokenBy(fit.schedule, film)).toEqual([]);
    const used = (of: CureSchedule) => cureTimeUsed({ readings: corners(of), curePoints: slow.curePoints });
    expect(used(fit.schedule)).toBeGreaterThanOrEqual(used(hotter));
    expect(used(fit.schedule)).toBeLessThan(used(hotter) * 1.03);
    expect(fit.lasts % 300).toBe(0);
    const draft = cureDraft(hotter);
    takeStages(draft, fit.schedule);
    expect(brokenBy(scheduleOf(draft) ?? hotter, film)).toEqual([]);
  });

  it('keeps the margin too, and is nothing where the limit leaves no cure', () => {
    const fit = whatFits(hotter, brokenBy(hotter, film, { part: 4 }), [slow]);
    expect(fit?.at).toBeCloseTo(celsius(68), 6);
    const cold = [{ name: 'masking', sees: 'air', highest: celsius(25) }] as const;
    expect(whatFits(hotter, brokenBy(hotter, cold), [slow])).toBeUndefined();
  });

  it('says that heat’s part is assumed where the sheet gives one time', () => {
    const one = { ...slow, curePoints: slow.curePoints.slice(0, 1) };
    expect(whatFits(hotter, brokenBy(hotter, film), [one])?.assumed).toBe(true);
    expect(whatFits(hotter, brokenBy(hotter, film), [slow])?.assumed).toBe(false);
  });
});

describe('the tape', () => {
  it('is told as a fact: winding tension only, a little, or hardest', () => {
    const tape = starterTapes['starter-tape-polyester-25'];
    const room = starterSchedules['starter-schedule-room-24'].schedule;
    expect(tapeSays(room, tape)).toContain('winding tension only');
    expect(tapeSays(schedule, tape)).toContain('shrinks a little');
    const hot = { ...schedule, stages: [{ kind: 'ramp', to: celsius(120), rate: 1 / 30 } as const] };
    expect(tapeSays(hot, tape)).toMatch(/pulls hardest from 100/);
  });
});

describe('a temperature typed in the other unit', () => {
  const oven = { quantity: 'temperature', min: celsius(-20), max: celsius(250) } as const;
  const ask = (text: string, of = expectedFor(slow)) => {
    const input = quantityInput(undefined, oven);
    input.text.value = text;
    return { input, question: askUnit(input, of) };
  };

  it('is asked about and kept: 66 in Fahrenheit against a resin good to 212', () => {
    units('inchPound');
    const { input, question } = ask('66');
    expect(question?.asks.replace(/\s/g, ' ')).toBe('Do you mean 66 °C = 150.8 °F?');
    expect(question?.same?.text).toBe('66 °F');
    expect(input.text.value).toBe('66');
    input.text.value = question?.other?.text ?? '';
    expect(input.si.value).toBeCloseTo(celsius(66), 9);
    expect(askUnit(input, expectedFor(slow))).toBeUndefined();
  });

  it('is asked about in Celsius too, where only Fahrenheit makes sense', () => {
    const { question } = ask('150');
    expect(question?.asks.replace(/\s/g, ' ')).toBe('Do you mean 150 °F = 65.6 °C?');
  });

  it('is asked about where it makes sense in neither: 350 with a room-temperature resin', () => {
    const room = { ...slow, highestTemperature: celsius(60) };
    units('inchPound');
    const { input, question } = ask('350', expectedFor(room));
    expect(question?.asks).toContain('far above');
    expect(question?.other).toBeUndefined();
    input.text.value = question?.same?.text ?? '';
    expect(askUnit(input, expectedFor(room))).toBeUndefined();
  });

  it('is not asked about where it fits, or where its unit is written', () => {
    expect(ask('66').question).toBeUndefined();
    expect(ask('150 °F').question).toBeUndefined();
    expect(ask('twelve apples').question).toBeUndefined();
  });
});
