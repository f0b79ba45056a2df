import { openFile } from '#app/curing/logger/open-file.ts';
import { tryFile } from '#app/curing/logger/try-file.ts';
import { loggerFileType } from '#shared/record/logger-file.ts';
import type { OvenLoadHeader } from '#shared/record/oven-load.ts';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';
import { photoHash } from '#storage/photo-hash.ts';
import { drawing } from './draw.ts';
import type { Draft } from './journal.ts';
import { heat, lags, turnedOff } from './oven.ts';
import { anchor } from './shop-time.ts';

/** The thermostat of the lower mast's first load sticks, and is found. */
export const runaway = { from: 165, found: 194, climbs: 1.1 };

const { schedule } = starterSchedules['starter-schedule-74-5'];

/** A row a minute, counted from when the oven was lit: air and tube to a tenth of a degree, as a cheap logger sees them. */
function rows(): string {
  const draw = drawing(303);
  const warmth = heat(schedule, 12 * 60, [lags['Lower mast']], runaway);
  const seen = (kelvin = schedule.start) => (kelvin - 273.15 + draw(-0.2, 0.2)).toFixed(1);
  const clock = (t: number) => `${Math.floor(t / 60)}:${String(t % 60).padStart(2, '0')}:00`;
  const lines = Array.from(
    { length: turnedOff(warmth, schedule) + 50 },
    (_, t) => `${clock(t)},${seen(warmth.air[t])},${seen(warmth.parts[0]?.[t])}`,
  );
  return ['Elapsed,Air C,Part C', ...lines, ''].join('\r\n');
}

const bytes = new TextEncoder().encode(rows());
const hash = await photoHash(bytes.buffer);

/** What the app makes of the file when it is brought in to its oven load. */
export function loggerDraft({ channels, zone }: OvenLoadHeader, litAt: number): Draft {
  const hottest = Math.max(...schedule.stages.map((s) => (s.kind === 'ramp' ? s.to : 0)));
  const { table, looked } = openFile(bytes, { near: litAt, hottest });
  if (!looked.ok) throw new Error(`the logger's file is not read: ${looked.why}`);
  const { dialect, heat: found } = looked.look;
  const columns = found.map(({ column, unit }, i) => ({ column, unit, channel: channels[i]?.id ?? '' }));
  const clocked = { zone, startsAt: litAt, shift: 0 };
  const { repairs, series, from, until } = tryFile(table, {
    dialect,
    columns,
    clocked,
    span: { lit: litAt },
    choices: {},
  });
  if (from === undefined || until === undefined) throw new Error("the logger's file has no readings");
  return {
    kind: 'loggerFile',
    hash,
    name: 'oven-load-3.csv',
    bytes: bytes.byteLength,
    dialect,
    columns,
    startsAt: litAt,
    shift: 0,
    clockZone: zone,
    repairs,
    series: series.map(({ channel, readings, highest }) => ({
      channel,
      readings,
      ...(highest !== undefined && { highest }),
    })),
    from,
    until,
  };
}

/** The file itself, as it stands in a backup. */
export const loggerBytes = {
  record: 'photo',
  v: 1,
  hash,
  type: loggerFileType,
  bytes: bytes.byteLength,
  addedAt: anchor,
  data: btoa(String.fromCharCode(...bytes)),
};
