import { Explain } from '#app/parts/explain.tsx';
import { show } from '#app/state/show.ts';
import { formatDuration } from '#shared/units/time.ts';
import { atWords } from './cure-words.ts';
import type { Cure, Heat } from './oven-cure.ts';
import type { Finish } from './oven-finish.ts';
import type { OvenNow } from './oven-now.ts';
import type { OvenResults } from './oven-results.ts';
import { sinceLit } from './oven-words.ts';

type Known = Extract<Cure, { known: true }>;
const degrees = (kelvin: number) => show(kelvin, 'temperature');
const rule = 'common practice, no source';

const energyRows = ({ slowest: { counting } }: Known): [string, string][] =>
  counting.below === counting.above
    ? [['Ea, by the cure times', show(counting.below, 'activationEnergy')]]
    : [
        ['Ea where it is cooler', show(counting.below, 'activationEnergy')],
        ['Ea where it is hotter', show(counting.above, 'activationEnergy')],
      ];

export function ExplainCure({ results, cure }: { results: OvenResults; cure: Known }) {
  const { asked, counting, progress, resin } = cure.slowest;
  const last = results.part.at(-1);
  return (
    <Explain
      inList
      of="Cure time used"
      formula="sum of dt / t(T), with t(T) = t exp((Ea/R)(1/T − 1/T0))"
      values={[
        ['Resin', resin],
        ...asked.curePoints.map((p): [string, string] => [
          'The sheet asks for',
          `${show(p.time, 'duration')} at ${degrees(p.temperature)}`,
        ]),
        ...energyRows(cure),
        ['Hotter than this counts as this', degrees(counting.ceiling)],
        ['Hottest that the coldest part was', progress.hottest > 0 ? degrees(progress.hottest) : 'not read'],
        ['Counted to', last ? sinceLit(results.series.from, last.time) : 'nothing read yet'],
        ['Cure time used', show(cure.share, 'fraction')],
      ]}
      source="ASTM C1074, equivalent age; 45 and 65 kJ/mol for a sheet with one time, and no credit for more than 15 K over the sheet: common practice, no source"
      sure="It counts time by its heat. It does not say how hard the resin is: a cup off its ratio never hardens, so feel the samples."
    />
  );
}

export function ExplainFinish({ cure, finish, now }: { cure: Known; finish: Finish; now: number }) {
  const { atThis, onSchedule, temperature } = finish;
  return (
    <Explain
      inList
      of="Predicted finish"
      formula="the time at which sum of dt / t(T) comes to 1"
      values={[
        ['Used so far', show(cure.share, 'fraction')],
        ['Coldest part, last read', degrees(temperature)],
        ['If it stays there', atThis === undefined ? 'never, or over a year' : atWords(atThis, now)],
        ...(onSchedule
          ? ([
              [
                'On the rest of the schedule',
                onSchedule.at === undefined
                  ? `ends at ${show(onSchedule.share, 'fraction')}`
                  : atWords(onSchedule.at, now),
              ],
            ] as [string, string][])
          : []),
      ]}
      source="ASTM C1074, equivalent age; the schedule as it was frozen"
      sure="It moves with every reading: two degrees hotter brings it nearer by a tenth. The hold of the schedule is a matter of its own."
    />
  );
}

export function ExplainTg({ heat, byPart }: { heat: Heat; byPart: boolean }) {
  const { hottest, becomes, own, wanted, needs } = heat;
  const optional = (name: string, value: number | undefined): [string, string][] =>
    value === undefined ? [] : [[name, degrees(value)]];
  return (
    <Explain
      inList
      of="Tg reached"
      formula={`Tg = the lower of T + ${show(15, 'temperatureDifference', 0)} and the resin’s own`}
      values={[
        [byPart ? 'T, hottest of the coldest part' : 'T, hottest by the air', degrees(hottest)],
        ...optional('The resin’s own, at best', own),
        ['Tg reached', degrees(becomes)],
        ...optional(`Tg wanted: hottest in service and ${show(15, 'temperatureDifference', 0)} more`, wanted),
        ...optional('Heat that asks for', needs),
      ]}
      source={`Tg ends 5 to 25 K above the highest cure temperature, 15 is counted on: ${rule}`}
      sure="Good to about 10 K, and only once the cure time is used up. A test of a sample (ASTM E1356 or D7028) would tell."
    />
  );
}

export function ExplainHold({ results, at, low }: { results: OvenResults; at: OvenNow; low: number }) {
  const { lag, hold, series } = results;
  const lagRows: [string, string][] = lag
    ? [
        ['Time constant of the mandrel', formatDuration(lag.timeConstant)],
        [
          'Counted from, three of these after the air',
          lag.countsFrom === undefined ? 'not in the band yet' : sinceLit(series.from, lag.countsFrom),
        ],
      ]
    : [];
  return (
    <Explain
      inList
      of="Hold counted"
      formula={
        lag ? 'time in the band, from 3 tau after the air; tau = rho c V/(h A)' : 'time at or above the foot'
      }
      values={[
        ['Foot of the band', degrees(low)],
        ['Judged by', series.by === 'part' ? 'the coldest part' : 'the air'],
        ...lagRows,
        ['Held', formatDuration(at.held)],
        ['Asked for', formatDuration(hold.lasts)],
      ]}
      source={
        lag
          ? 'lumped heating of a body; heat from moved oven air 30 W/(m2 K): common practice, no source'
          : 'the readings, straight between them'
      }
      sure={
        lag
          ? 'In still air it takes about twice as long. A sensor on the thickest part would tell.'
          : 'A stretch that nobody read for twice the due time is left out.'
      }
    />
  );
}
