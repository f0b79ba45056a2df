import { wallProblem } from '#app/planning/wall/wall-words.ts';
import { show } from '#app/state/show.ts';
import type { Cloth } from '#shared/record/cloth.ts';
import { epoxy } from '#shared/reference/strengths.ts';
import { laminaOf } from './cloth-material.ts';
import type { ClothInTube, Tube, TubeStop } from './tube-of-plan.ts';

export interface StopWords {
  title: string;
  /** Why, and what to do. */
  says: string;
  /** Where it is put right; the plan's own places are left to its screen. */
  cloth?: string;
}

export const strengthPath = (cloth: string) => `/shelf/cloth/${cloth}/strength`;

/** Why a tube cannot be reckoned. */
export function stopWords(stop: TubeStop): StopWords {
  switch (stop.why) {
    case 'wall':
      return {
        title: 'Its wall cannot be rolled',
        says: wallProblem(stop.error, stop.plan.wall).says,
      };
    case 'open':
      return {
        title: `The tube is open at ${show(stop.at, 'length', 0)}`,
        says: 'Less than one ply of cloth goes all round there, so it is no tube. Let a piece reach over it.',
      };
    case 'no stiffness':
      return {
        title: `Nobody knows how stiff ${stop.cloth.name} is`,
        says: 'Its fiber is none of the usual ones. Write down its stiffness on the shelf.',
        cloth: stop.cloth.id,
      };
    case 'fiber volume':
      return {
        title: `A ply of ${stop.cloth.name} cannot be as thin as planned`,
        says: 'It would be more fiber than goes into a ply. Check the ply thickness of the plan and the weight of the cloth.',
      };
    case 'lamina':
      return {
        title: `The stiffness of ${stop.cloth.name} cannot be`,
        says: 'By its figures it would be softer than resin, or a part of it. Check them on the shelf.',
        cloth: stop.cloth.id,
      };
    case 'crimp':
      return {
        title: `The weave of ${stop.cloth.name} leaves too little`,
        says: 'With so little left along its fibers, its Poisson’s ratio cannot hold. Check both on the shelf.',
        cloth: stop.cloth.id,
      };
  }
}

const percent = (share: number) => show(share, 'fraction', 0);
const named = (cloths: readonly { name: string }[]) => [...new Set(cloths.map((c) => c.name))].join(' and ');

function crimpWords(cloths: readonly ClothInTube[]): string {
  const left = [...new Set(cloths.flatMap(({ crimp }) => crimp ?? []))].map(percent).join(' and ');
  return `Woven cloth counts as two crossed plies of half its thickness, and its waves leave ${left} along the fibers.`;
}

function keptWords({ compressionKept, compressionKeptFrom }: Tube['assumed']): string {
  const whose = compressionKeptFrom === 'plan' ? 'as the plan says' : 'common practice for a wet layup';
  return `Of strength in compression along the fibers ${percent(compressionKept)} is kept, ${whose}.`;
}

function shopWords(stiffness: Tube['assumed']['stiffness']): string {
  const { factor = 1, builds } = stiffness ?? {};
  const whose = builds === undefined ? 'this shop' : `${builds} tubes of this shop`;
  return `Along and across its fibers a ply is ${percent(factor)} as stiff as its figures say: the median of ${whose}, bent under a weight.`;
}

/** What was taken for true that nobody measured, a sentence each. */
export function assumedWords({ assumed, cloths, withoutStrengths }: Tube): string[] {
  const says: Record<(typeof assumed.what)[number], () => string> = {
    'handbook values': () =>
      `${named(cloths.filter((c) => c.from === 'handbook'))}: a handbook’s figures, typical, not for design.`,
    'along by mixtures': () =>
      `Along the fibers a ply is as stiff as its shares of fiber and epoxy make it (rule of mixtures), with epoxy at ${show(epoxy.e, 'modulus')}.`,
    'across by Halpin-Tsai': () => 'Across the fibers and in shear it goes by Halpin and Tsai.',
    'fiber stiffer than any across': () =>
      'Across the fibers the figures ask for a stiffer fiber than there can be: the stiffest was taken.',
    'strength along with stiffness': () =>
      'Along the fibers strength goes with stiffness: a ply breaks at the same stretch.',
    'strength across unchanged': () => 'Across the fibers and in shear strength stays as it was found.',
    'pressed strength knocked down': () => keptWords(assumed),
    'stiffness only': () =>
      `${named(withoutStrengths)}: no strengths are known, so stiffness and buckling only.`,
    crimp: () => crimpWords(cloths),
    'shop stiffness': () => shopWords(assumed.stiffness),
    'even wall': () =>
      'No wall is drawn: the plies of the plan go evenly from end to end, warp along the tube.',
    'no density': () => 'The resin of the plan is gone from the shelf, so nothing is weighed.',
  };
  return assumed.what.map((one) => says[one]());
}

/** 'Stiffness and strength: handbook’s, typical' */
export function knownWords(cloth: Cloth): string {
  const known = laminaOf(cloth);
  if (!known) return 'Not known: write what its data sheet says';
  const what = known.lamina.strengths ? 'Stiffness and strength' : 'Stiffness only';
  return known.from === 'own' ? `${what}: your own` : `${what}: handbook’s, typical`;
}
