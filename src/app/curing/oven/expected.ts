import type { OvenState, ReadingAt } from '#shared/record/oven-state.ts';
import { formatQuantity, inUnits } from '#shared/units/format.ts';
import { parseQuantity } from '#shared/units/parse.ts';
import type { UnitSystem } from '#shared/units/quantity.ts';
import { scheduledAt } from './oven-schedule.ts';
import { litOf } from './oven-series.ts';

/** Chips reach this many degrees to either side of what is expected. */
const reach = 2;
/** A trend older than this says nothing about now, ms */
const trendHolds = 2 * 3600_000;

/** K/ms between the last two readings, while they are recent */
function trendOf(readings: readonly ReadingAt[], now: number): number {
  const [before, last] = readings.slice(-2);
  if (!before || !last || last.at <= before.at || now - before.at > trendHolds) return 0;
  return (last.temperature - before.temperature) / (last.at - before.at);
}

/**
 * What a sensor should read about now, K: from its last reading on toward what the schedule asks for, as fast as
 * the schedule moves or as it moved itself, and not past it. With no reading yet, the schedule.
 */
export function expectedReading(state: OvenState, channel: string, now: number): number {
  const { schedule } = state.header;
  const from = litOf(state);
  const asked = (at: number) => scheduledAt(schedule, (at - from) / 1000);
  const readings = state.readings.find((r) => r.channel.id === channel)?.at ?? [];
  const last = readings.at(-1);
  if (!last) return asked(now);
  const target = state.offAt === undefined ? asked(now) : schedule.start;
  const way = target - last.temperature;
  const passed = Math.max(0, now - last.at);
  const moved = state.offAt === undefined ? asked(now) - asked(last.at) : 0;
  const toward = Math.max(0, Math.sign(way) * moved, Math.sign(way) * trendOf(readings, now) * passed);
  return last.temperature + Math.sign(way) * Math.min(Math.abs(way), toward);
}

export interface Chip {
  /** 66, without its unit */
  figure: string;
  /** '66 °C' */
  text: string;
  /** K */
  si: number;
  typed: string;
}

/** The whole degrees around an expected reading, in the builder's unit. */
export function chipsAround(expected: number, system: UnitSystem): Chip[] {
  const middle = Math.round(inUnits(expected, { quantity: 'temperature', system }).value);
  return Array.from({ length: 2 * reach + 1 }, (_, i) => String(middle - reach + i)).flatMap((degrees) => {
    const parsed = parseQuantity(degrees, { quantity: 'temperature', system });
    if (!parsed.ok) return [];
    const text = formatQuantity(parsed.si, { quantity: 'temperature', system });
    return [{ figure: degrees.replace('-', '−'), text, si: parsed.si, typed: parsed.typed }];
  });
}
