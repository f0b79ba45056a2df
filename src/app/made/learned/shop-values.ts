import type { Learnable } from '#shared/record/plan.ts';
import { type Factor, factorFrom, tooFew } from './factors.ts';
import type { Made } from './made-facts.ts';

/** What a plan is made of, by the names that builds keep. */
export interface MadeWith {
  cloth: string;
  release?: string | undefined;
  tape?: string | undefined;
}

/** The nearest match with builds enough to go by, else the nearest match at all. */
function closest(...factors: (Factor | undefined)[]): Factor | undefined {
  const found = factors.filter((f) => f !== undefined);
  return found.find((f) => !tooFew(f)) ?? found[0];
}

/** How stiff tubes of this cloth came out against what was reckoned; undefined where none was tested. */
export const shopStiffnessOf = (made: readonly Made[], cloth: string): Factor | undefined =>
  factorFrom(
    'stiffness',
    made.filter(({ build }) => build.cloth === cloth),
    'of this cloth',
  );

/** What this shop's builds say for a plan of these materials. */
export function shopValues(
  made: readonly Made[],
  { cloth, release, tape }: MadeWith,
): Partial<Record<Learnable, Factor>> {
  const sameCloth = made.filter(({ build }) => build.cloth === cloth);
  const sameMethod = sameCloth.filter(({ build }) => build.release === release && build.tape === tape);
  const sameTape = made.filter(({ build }) => build.tape === tape);
  const values = {
    fiberVolume: closest(
      factorFrom('fiberVolume', sameMethod, 'of this cloth, release and tape'),
      factorFrom('fiberVolume', sameCloth, 'of this cloth'),
    ),
    lossPerCup: factorFrom('lossPerCup', made),
    squeezeOut: factorFrom('squeezeOut', sameTape, 'under this tape'),
    workingRate: factorFrom('workingRate', made),
    plyThickness: factorFrom('plyThickness', sameCloth, 'of this cloth'),
  };
  return Object.fromEntries(Object.entries(values).filter(([, factor]) => factor !== undefined));
}
