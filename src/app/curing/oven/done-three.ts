import { allHard, samplesOf } from '#app/laying-up/build/samples.ts';
import { buildName } from '#app/laying-up/clocks/clock-list.ts';
import { show } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
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

/** Below this a thermometer's last figure decides, K */
const hair = 1e-6;

function cureLine({ cure }: OvenResults): DoneLine {
  const what = 'Cure time used up, by the data sheet';
  if (!cure.known) return { what, says: 'not known', met: false };
  return { what, says: `${Math.floor(100 * cure.share + 1e-9)} %`, met: cure.share >= 1 };
}

/** Hot enough for the glass transition (Tg) that the plan's hottest in service asks for. */
function heatLine({ series, lag, heat }: OvenResults, { holdLow }: CureSchedule): DoneLine {
  const where = series.by === 'part' ? 'Coldest part' : lag ? 'Part, reckoned from the air,' : 'Air';
  const what = `${where} hot enough for the Tg you want`;
  if (!heat) return { what, says: 'not read yet', met: false };
  const { hottest, becomes, wanted, own, needs } = heat;
  const degrees = (k: number) => show(k, 'temperature', 0);
  if (wanted === undefined || needs === undefined) {
    const says = `${degrees(hottest)} reached of ${degrees(holdLow)}; the plan gives no hottest in service`;
    return { what, says, met: hottest >= holdLow - hair };
  }
  if (own !== undefined && own < wanted) {
    return {
      what,
      says: `${degrees(wanted)} wanted, this resin ends at ${degrees(own)}: no oven gets it there, only another resin`,
      met: false,
    };
  }
  const says = `${degrees(hottest)} of ${degrees(needs)} needed. Tg ${degrees(becomes)}, ${degrees(wanted)} wanted`;
  return { what, says, met: becomes >= wanted - hair };
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
export function doneLines(
  results: OvenResults,
  { header }: OvenState,
  builds: readonly Inside[],
): DoneLine[] {
  return [cureLine(results), heatLine(results, header.schedule), samplesLine(builds)];
}
