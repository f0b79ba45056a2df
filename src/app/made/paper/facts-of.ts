import { hardenerPerResin } from '#app/laying-up/mix/recipe.ts';
import { buildShelf, walledPlanOf } from '#app/planning/cutting/build-shelf.ts';
import { type CutPiece, piecesOrProblem } from '#app/planning/cutting/cut-pieces.ts';
import { dimension } from '#app/planning/cutting/dimensions.ts';
import { planOfBuild } from '#app/planning/cutting/plan-of-build.ts';
import { show } from '#app/state/show.ts';
import { ratioError } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import type { CupState } from '#shared/record/cup-state.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import { formatClockTime, formatDuration } from '#shared/units/time.ts';

/** A line of a table on paper: what, and its values. */
export type Row = readonly string[];

/** 'up to 66 °C at 2.0 °C/min' */
export function scheduleRows({ start, stages, holdLow, holdHigh }: CureSchedule): Row[] {
  const degrees = (k: number) => show(k, 'temperature', 0);
  const rows = stages.map((s): Row => {
    if (s.kind === 'hold') return ['Hold', formatDuration(s.lasts)];
    return [s.kind === 'ramp' ? 'Up' : 'Down', `to ${degrees(s.to)} at ${show(s.rate, 'rampRate', 1)}`];
  });
  const band =
    holdHigh === undefined ? `from ${degrees(holdLow)}` : `${degrees(holdLow)} to ${degrees(holdHigh)}`;
  return [['Begins at', degrees(start)], ...rows, ['Counts as hold', band]];
}

/** What the plan said when the tube was started. */
export function plannedRows({ header }: BuildState): Row[] {
  const { goal, mandrelDiameter, tubeLength, plies, serviceTemperature } = header;
  const plan = planOfBuild(header);
  return [
    ...(plan ? [['Plan, as it was then', plan.name]] : []),
    ...(mandrelDiameter === undefined ? [] : [['Mandrel, bare', show(mandrelDiameter, 'diameter')]]),
    ...(tubeLength === undefined ? [] : [['Tube', dimension(tubeLength)]]),
    ...(plies === undefined ? [] : [['Plies, at most', String(plies)]]),
    ['Cloth, dry', show(header.clothMass, 'mass')],
    ...(header.coreMass ? [['Core', show(header.coreMass, 'mass')]] : []),
    ['Fiber volume', show(goal.fiberVolumeFraction, 'fraction', 0)],
    ['Loss in a cup', show(goal.lossPerCup, 'mass')],
    ['Squeezed out by the tape', show(goal.squeezeOut, 'fraction', 0)],
    ...(serviceTemperature === undefined
      ? []
      : [['Hottest in service', show(serviceTemperature, 'temperature', 0)]]),
  ];
}

const lotOf = { cloth: 'Cloth', resin: 'Resin', hardener: 'Hardener', tape: 'Tape' } as const;

export function materialRows({ header, lots }: BuildState): Row[] {
  const { cloth, resin, release, tape } = header;
  return [
    ['Cloth', `${cloth.name}, ${show(cloth.arealWeight, 'arealWeight')}`],
    ['Resin', resin.name],
    ['Hardener', resin.lot ? `${resin.hardener}, lot ${resin.lot}` : resin.hardener],
    ['Hardener to 100 of resin', show(100 * hardenerPerResin(resin), 'phr')],
    ...(release ? [['Release', release.name]] : []),
    ...(tape ? [['Tape', tape.name]] : []),
    ...lots.map((l): Row => [`${lotOf[l.entry.of]} from`, l.entry.label]),
  ];
}

/** Pieces of a drawn wall as they were to be cut; none when what it was drawn with is gone from the shelf. */
export function piecesOf({ header }: BuildState): CutPiece[] {
  const plan = walledPlanOf(header);
  if (!plan) return [];
  const cut = piecesOrProblem(plan, buildShelf(header, plan));
  return typeof cut === 'string' ? [] : cut;
}

function fate({ asItIs, discardedAt }: CupState): string {
  return [asItIs && `left ${asItIs} on purpose`, discardedAt !== undefined && 'thrown out']
    .filter(Boolean)
    .join(', ');
}

/** Cup, resin, hardener, off, hardener in, on the cloth, of usable life. */
export function cupRows({ cups, header }: BuildState): Row[] {
  const hardenerToResin = hardenerPerResin(header.resin);
  return cups
    .filter((c) => c.resin > 0)
    .map((c): Row => {
      const off =
        c.hardener > 0
          ? ratioError({
              resinPoured: c.resin,
              hardenerPoured: c.hardener,
              hardenerPerResin: hardenerToResin,
            })
          : undefined;
      return [
        `${c.number}${c.round > 1 ? `, round ${c.round}` : ''}`,
        show(c.resin, 'mass'),
        show(c.hardener, 'mass'),
        off === undefined ? '–' : `${off > 0 ? '+' : ''}${show(off, 'fraction')}`,
        c.hardenerAt === undefined ? '–' : formatClockTime(c.hardenerAt, header.zone),
        c.emptyAt === undefined ? fate(c) || '–' : formatClockTime(c.emptyAt, header.zone),
        c.usableLife === undefined ? '–' : formatDuration(c.usableLife),
      ];
    });
}
