import { finite, notNegative, positive } from './check.ts';
import { equivalentTime } from './equivalent-time.ts';
import { type ProfileStage, profilePoints } from './profile.ts';

/**
 * A schedule that stays at or under a temperature and uses the same cure time: every stage that goes
 * higher ends there, and a hold there lasts so much longer. Where no hold lies at that temperature, one
 * is put after the first stage that got there.
 *
 * @param start temperature at time 0, K, greater than 0 and at most `highest`
 * @param stages in order; `to` K, greater than 0; `rate` K/s, greater than 0; `lasts` s, at least 0
 * @param highest K, greater than 0
 * @param activationEnergy J/mol, at least 0
 * @returns `stages`, and `longer`, s that were added to the hold: 0 when it fitted as it was
 * @throws RangeError naming the field and its stage; `highest` when the schedule starts above it, or the
 *   hold would last beyond any number
 *
 * Formula: the integral of exp(-(Ea/R)(1/T - 1/Thighest)) dt is the same before and after.
 * Source: ASTM C1074, equivalent age.
 *
 * @example
 * // Up from 23 C to 92 C, 2 hours, with 55 kJ/mol. What fits under 82 C?
 * scheduleThatFits({
 *   start: 296.15,
 *   stages: [{ kind: 'ramp', to: 365.15, rate: 2 / 60 }, { kind: 'hold', lasts: 7200 }],
 *   highest: 355.15,
 *   activationEnergy: 55000,
 * })
 * // => { stages: [{ kind: 'ramp', to: 355.15, rate: 0.03333 }, { kind: 'hold', lasts: 12383 }], longer: 5183 }
 */
export function scheduleThatFits(input: {
  start: number;
  stages: readonly ProfileStage[];
  highest: number;
  activationEnergy: number;
}): { stages: ProfileStage[]; longer: number } {
  const start = positive(input, 'start', 'K');
  const highest = positive(input, 'highest', 'K');
  const activationEnergy = notNegative(input, 'activationEnergy', 'J/mol');
  if (start > highest) throw new RangeError(`highest must be at least start, ${start} K, got ${highest}`);
  const worth = (stages: readonly ProfileStage[]) =>
    equivalentTime({
      readings: profilePoints({ start, stages }),
      referenceTemperature: highest,
      activationEnergy,
    });
  const asked = worth(input.stages);
  const capped = input.stages.map((stage) =>
    stage.kind === 'hold' ? { ...stage } : { ...stage, to: Math.min(stage.to, highest) },
  );
  const isOver = input.stages.some((stage) => stage.kind !== 'hold' && stage.to > highest);
  if (!isOver) return { stages: capped, longer: 0 };
  const longer = finite(Math.max(0, asked - worth(capped)), 'highest');
  return { stages: withLongerHold({ stages: capped, start, highest, longer }), longer };
}

/** The longest hold at the highest temperature takes it; a new one where there is none. */
function withLongerHold({
  stages,
  start,
  highest,
  longer,
}: {
  stages: ProfileStage[];
  start: number;
  highest: number;
  longer: number;
}): ProfileStage[] {
  let temperature = start;
  let reached = -1;
  let best = -1;
  let most = -1;
  stages.forEach((stage, index) => {
    if (stage.kind === 'hold') {
      if (temperature === highest && stage.lasts > most) [best, most] = [index, stage.lasts];
      return;
    }
    temperature = stage.to;
    if (temperature === highest && reached < 0) reached = index;
  });
  if (best < 0) {
    return [...stages.slice(0, reached + 1), { kind: 'hold', lasts: longer }, ...stages.slice(reached + 1)];
  }
  return stages.map((stage, index) =>
    index === best && stage.kind === 'hold' ? { ...stage, lasts: stage.lasts + longer } : stage,
  );
}
