import { show } from '#app/state/show.ts';
import { formatClockTime, formatDay, formatDuration } from '#shared/units/time.ts';
import type { Fault } from './fault.ts';
import type { Look } from './look.ts';

const counted = (n: number, one: string, many = `${one}s`) =>
  `${n.toLocaleString('en-US')} ${n === 1 ? one : many}`;

const long = (seconds: number) =>
  seconds >= 48 * 3600 ? counted(Math.round(seconds / 86_400), 'day') : formatDuration(seconds);

/** What is wrong, in a line. */
export function faultTitle(fault: Fault, name: string): string {
  const { count, size = 0, value } = fault;
  switch (fault.kind) {
    case 'noTime':
      return `${counted(count, 'row')} without a time`;
    case 'wildStamps':
      return `${counted(count, 'row')} with a stray time`;
    case 'clockBack':
      return `The clock jumped back ${long(size)}`;
    case 'clockAhead':
      return `The clock jumped ahead ${long(size)}`;
    case 'hourRepeated':
      return 'An hour comes twice, as when clocks go back for winter';
    case 'hourMissing':
      return 'An hour is missing, as when clocks go ahead for summer';
    case 'repeats':
      return fault.repair?.repeats === 'spread'
        ? 'The clock tells minutes only, and rows share them'
        : `${counted(count, 'row')} with the time of the row before`;
    case 'gap':
      return `${counted(count, 'gap')}, the longest ${long(size)}`;
    case 'dead':
      return `${name}: no sensor was connected`;
    case 'noReading':
      return `${name} reads nothing in ${counted(count, 'row')}`;
    case 'flat':
      return `${name} stands still at ${value === undefined ? 'one value' : show(value, 'temperature')} for ${long(size)}`;
    case 'spike':
      return `${name} jumps for a single row, ${counted(count, 'time')}`;
    case 'noise':
      return `Flicker of ${show(size, 'temperatureDifference')} from row to row`;
    case 'outside':
      return `${counted(count, 'row')} before or after this oven load`;
  }
}

function doneAbout(fault: Fault): string {
  switch (fault.kind) {
    case 'noTime':
      return 'Left out';
    case 'wildStamps':
      return 'Left out';
    case 'clockBack':
    case 'clockAhead':
      return 'Put right: the run goes on where it was';
    case 'hourRepeated':
      return 'Put right: later readings come an hour later';
    case 'hourMissing':
      return 'Closed: later readings come an hour sooner';
    case 'repeats':
      return fault.repair?.repeats === 'spread'
        ? 'Spread evenly over each minute'
        : 'The first of each time is kept';
    case 'gap':
      return 'Nothing is filled in: nobody knows what it was';
    case 'dead':
      return 'Left out';
    case 'noReading':
      return fault.value === undefined
        ? 'Left out'
        : `Left out: it says ${show(fault.value, 'temperature', 0)} there`;
    case 'flat':
      return 'Left out while it stands still';
    case 'spike':
      return 'Left out: no oven does that in a row';
    case 'noise':
      return `The middle of every ${formatDuration(fault.repair?.smooth ?? 0)} stands for it`;
    case 'outside':
      return 'Left out: kept from 30 min before it was lit to 1 h after it was out';
  }
}

const undoneAbout: Partial<Record<Fault['kind'], string>> = {
  wildStamps: 'Kept: their times stay as they are',
  clockBack: 'Not put right: rows with an earlier time are left out',
  clockAhead: 'Not put right: it stays a gap',
  hourRepeated: 'Not put right: the second of both hours is left out',
  hourMissing: 'It stays a gap of an hour',
  repeats: 'The first of each minute is kept',
  flat: 'Kept as it is',
  spike: 'Kept as it is: it counts as the highest read',
  noise: 'Kept as it is: the steepest ramp is over 5 min all the same',
  outside: 'Kept',
};

/** Where it is: 'row 113, 10:15 AM' */
function whereOf({ row, at }: Fault, { dialect }: Look, zone: number, now: number): string {
  const line = `first in row ${(dialect.firstRow + row + 1).toLocaleString('en-US')}`;
  if (Number.isNaN(at)) return line;
  return `${line}, ${formatDay(at, zone, now)}, ${formatClockTime(at, zone)}`;
}

export function faultAbout(
  fault: Fault,
  isDone: boolean,
  { look, zone, now }: { look: Look; zone: number; now: number },
): string {
  const says = isDone || !fault.repair ? doneAbout(fault) : (undoneAbout[fault.kind] ?? 'Kept as it is');
  return fault.kind === 'noise' ? says : `${says}; ${whereOf(fault, look, zone, now)}`;
}
