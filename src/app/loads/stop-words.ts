import type { TubeStop } from '#app/carry/tube-of-plan.ts';
import { wallProblem } from '#app/wall/wall-words.ts';
import { place } from './load-words.ts';
import type { Trouble } from './troubles.ts';

/** Why the wall itself cannot be reckoned, and where that is mended. */
export function stopTrouble(doc: string, stop: TubeStop): Trouble {
  const wall = { to: `/plan/${doc}/wall`, act: 'Put the wall right' };
  switch (stop.why) {
    case 'wall':
      return { ...wall, says: wallProblem(stop.error, stop.plan.wall).says };
    case 'open':
      return {
        ...wall,
        says: `At ${place(stop.at)} there is no whole ply of cloth all round: give the wall one ply at least.`,
      };
    default:
      break;
  }
  const { id, name } = stop.cloth;
  const cloth = { to: `/shelf/cloth/${id}`, act: `Say what ${name} bears` };
  switch (stop.why) {
    case 'no stiffness':
      return {
        ...cloth,
        says: `${name} has no stiffness on the shelf: write its moduli, or say what fiber it is of.`,
      };
    case 'fiber volume':
      return {
        ...cloth,
        says: `${name} comes out with more or less fiber than a wall can have: check its ply thickness.`,
      };
    case 'lamina':
      return {
        ...cloth,
        says: `The moduli of ${name} do not go together: check them against its data sheet.`,
      };
    case 'crimp':
      return {
        ...cloth,
        says: `The crimp of ${name} leaves nothing of its stiffness: write a share above 0.`,
      };
  }
}
