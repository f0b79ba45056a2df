import { allHard, samplesOf } from '#app/build/samples.ts';
import { buildName } from '#app/clocks/clock-list.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { formatDuration } from '#shared/units/time.ts';
import type { OvenNow } from './oven-now.ts';
import type { OvenResults } from './oven-results.ts';

/** A tube in the oven. */
export interface Inside {
  state: BuildState;
  round: number;
}

export interface DoneLine {
  what: string;
  says: string;
  met: boolean;
}

/** A hair of rounding must not keep a hold from being done, s */
const hair = 1;

function cureLine({ cure }: OvenResults): DoneLine {
  const what = 'Cure time used up, by the data sheet';
  if (!cure.known) return { what, says: 'not known', met: false };
  return { what, says: `${Math.floor(100 * cure.share + 1e-9)} %`, met: cure.share >= 1 };
}

function holdLine({ series, hold }: OvenResults, { held }: OvenNow): DoneLine {
  return {
    what: series.by === 'part' ? 'Coldest part long enough in its band' : 'Air long enough in its band',
    says: `${formatDuration(Math.min(held, hold.lasts))} of ${formatDuration(hold.lasts)}`,
    met: held >= hold.lasts - hair,
  };
}

function samplesLine(builds: readonly Inside[]): DoneLine {
  const what = 'Every cup sample hard';
  const all = builds.flatMap(({ state, round }) => samplesOf(state, round));
  const hard = all.filter((s) => s.feel === 'hard').length;
  const felt = all.filter((s) => s.feel !== undefined).length;
  const waiting = builds.filter(toFeel).map(({ state }) => buildName(state));
  const whose = builds.length > 1 && waiting.length > 0 ? `${waiting.join(' and ')} not felt yet` : '';
  if (felt === 0) return { what, says: whose || 'not felt yet', met: false };
  const says = [`${hard} of ${all.length}`, whose].filter(Boolean).join(', ');
  return { what, says, met: all.length > 0 && allHard(all) };
}

/** A sample of this tube waits for a fingernail. */
export const toFeel = ({ state, round }: Inside): boolean =>
  samplesOf(state, round).some((s) => s.feel === undefined);

/** Done needs all three; what is missing is said, and nothing is blocked by it. */
export function doneLines(results: OvenResults, at: OvenNow, builds: readonly Inside[]): DoneLine[] {
  return [cureLine(results), holdLine(results, at), samplesLine(builds)];
}
