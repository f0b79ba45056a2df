import { buildShelf, walledPlanOf } from '#app/planning/cutting/build-shelf.ts';
import { planOfBuild } from '#app/planning/cutting/plan-of-build.ts';
import {
  hasWall,
  plyThickness,
  rollOf,
  theShelf,
  type WalledPlan,
  type WallShelf,
} from '#app/planning/wall/wall-model.ts';
import { findDoc } from '#app/state/documents.ts';
import type { OutsideAt } from '#calc';
import type { BuildHeader } from '#shared/record/build.ts';
import type { Cloth } from '#shared/record/cloth.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { Plan } from '#shared/record/plan.ts';
import type { Tape } from '#shared/record/tape.ts';

/** What is to be wound: the tube under the tape, the tape, and the heat it will see. */
export interface TapeJob {
  outside: readonly OutsideAt[];
  tape: Tape | undefined;
  /** Where the tape stands on the shelf. */
  tapeDoc: string | undefined;
  schedule: CureSchedule | undefined;
  /** There is core in the wall, which tape can crush. */
  hasCore: boolean;
}

/** Why there is no job: said with what to do about it. */
export interface NoJob {
  says: string;
}

/** m; finer would change the length by less than a turn */
const everySoOften = 0.01;

function outsideOfWall(plan: WalledPlan, shelf: WallShelf): OutsideAt[] | NoJob {
  try {
    const { at, outsideDiameter } = rollOf(plan, shelf, everySoOften);
    return Array.from(at, (x, i) => ({ at: x, diameter: outsideDiameter[i] ?? 0 }));
  } catch (error) {
    if (error instanceof RangeError)
      return { says: 'Its wall cannot be rolled as it is drawn: mend the wall first.' };
    throw error;
  }
}

interface Even {
  cloth: Cloth | undefined;
  mandrelDiameter: number | undefined;
  tubeLength: number | undefined;
  plies: number | undefined;
  fiberVolumeFraction: number;
  buildUp: number;
}

/** Of a tube of one wall all along, as a plan without a drawn wall has it. */
function outsideEven({ cloth, mandrelDiameter, tubeLength, plies, ...rest }: Even): OutsideAt[] | NoJob {
  if (!cloth) return { says: 'Its cloth is no longer on the shelf, so its wall is not known.' };
  if (!mandrelDiameter || !tubeLength || !plies) {
    return {
      says: 'This tube was started without its diameter, length or plies. Make a plan of it to see its tape.',
    };
  }
  const wall = plies * plyThickness(cloth, rest.fiberVolumeFraction);
  const diameter = mandrelDiameter + rest.buildUp + 2 * wall;
  return [0, tubeLength].map((at) => ({ at, diameter }));
}

const coreIn = ({ wall }: Plan) => wall?.pieces.some((p) => p.kind === 'core') ?? false;

export function jobOfPlan(plan: Plan): TapeJob | NoJob {
  const outside = hasWall(plan)
    ? outsideOfWall(plan, theShelf)
    : outsideEven({
        ...plan,
        cloth: theShelf.cloth(plan.cloth),
        fiberVolumeFraction: plan.goal.fiberVolumeFraction,
        buildUp: theShelf.release(plan.release)?.buildUp ?? 0,
      });
  if ('says' in outside) return outside;
  return {
    outside,
    tape: findDoc('tape', plan.tape)?.body,
    tapeDoc: plan.tape,
    schedule: plan.schedule,
    hasCore: coreIn(plan),
  };
}

export function jobOfBuild(header: BuildHeader): TapeJob | NoJob {
  const walled = walledPlanOf(header);
  const outside = walled
    ? outsideOfWall(walled, buildShelf(header, walled))
    : outsideEven({
        cloth: header.cloth,
        mandrelDiameter: header.mandrelDiameter,
        tubeLength: header.tubeLength,
        plies: header.plies,
        fiberVolumeFraction: header.goal.fiberVolumeFraction,
        buildUp: header.release?.buildUp ?? 0,
      });
  if ('says' in outside) return outside;
  const tapeDoc = planOfBuild(header)?.tape;
  const hasCore = walled !== undefined && coreIn(walled);
  return { outside, tape: header.tape, tapeDoc, schedule: header.schedule, hasCore };
}
