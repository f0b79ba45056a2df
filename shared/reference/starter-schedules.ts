import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import { celsius, hours, kelvinPerMinute, minutes } from './quantities.ts';

// Ramps of 1 to 3 C a minute before gel, readings every 30 minutes while holding: common practice, no source.
const readEvery = minutes(30);

/** A hold at room temperature: no ramp, read a few times a day. */
function atRoomTemperature(lasts: number): CureSchedule {
  return {
    start: celsius(23),
    stages: [{ kind: 'hold', lasts }],
    holdLow: celsius(20),
    readEvery: hours(6),
  };
}

/** Up, hold, down: the band reaches from 3 degrees below the hold to 6 above. */
function rampAndHold(hold: number, lasts: number, perMinute: number): CureSchedule {
  return {
    start: celsius(23),
    stages: [
      { kind: 'ramp', to: celsius(hold), rate: kelvinPerMinute(perMinute) },
      { kind: 'hold', lasts },
      { kind: 'cool', to: celsius(35), rate: kelvinPerMinute(1.5) },
    ],
    holdLow: celsius(hold - 3),
    holdHigh: celsius(hold + 6),
    readEvery,
  };
}

/** Schedules to start a plan from, in the order they are offered. */
export const starterSchedules = {
  'starter-schedule-room-24': { name: 'Room temperature, 24 h', schedule: atRoomTemperature(hours(24)) },
  'starter-schedule-room-48': { name: 'Room temperature, 48 h', schedule: atRoomTemperature(hours(48)) },
  'starter-schedule-49-8': { name: '49 °C (120 °F), 8 h', schedule: rampAndHold(49, hours(8), 1) },
  'starter-schedule-66-3': { name: '66 °C (150 °F), 3 h', schedule: rampAndHold(66, hours(3), 2) },
  'starter-schedule-74-5': { name: '74 °C (165 °F), 5 h', schedule: rampAndHold(74, hours(5), 2) },
  'starter-schedule-80-4': { name: '80 °C (176 °F), 4 h', schedule: rampAndHold(80, hours(4), 2) },
} as const satisfies Record<string, { name: string; schedule: CureSchedule }>;
