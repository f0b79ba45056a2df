import { keptBy } from '#app/planning/wall/kept-by.ts';
import { stationsOnTube } from '#app/planning/wall/shape-edits.ts';
import { type WallSection, wallSection } from '#calc';
import { pliesIn, type Tube } from './tube-of-plan.ts';

/** The tube cut across at a place, m from end 0. */
export interface SectionAt {
  at: number;
  innerDiameter: number;
  section: WallSection;
}

/** Nearer than this two places are one, m */
const same = 1e-6;
/** So far before a jump the tube is still as it was, m */
const justBefore = 1e-7;

/** Where the wall jumps: what it is before, and after. */
function jumpsOf({ roll, length }: Tube): number[] {
  const jumps = roll.at.filter((at, i) => roll.before[i] === 1 && at > same && at < length - same);
  return [...jumps];
}

/** Both ends, and every station of pieces and mandrel. */
function told({ wall, length }: Tube): number[] {
  return [
    0,
    length,
    ...wall.mandrel.stations.map(({ at }) => at),
    ...wall.pieces.flatMap((piece) => stationsOnTube(piece).map(({ at }) => at)),
  ];
}

/** The places that the builder set, each once, from end 0. */
export function stationsOf(tube: Tube): number[] {
  const onTube = told(tube).filter((at) => at >= 0 && at <= tube.length);
  return [...new Set(onTube)].sort((a, b) => a - b);
}

/** Every station, every jump, and an even grid of `count` places. */
function placesAlong(tube: Tube, count: number): number[] {
  const { length } = tube;
  const grid = Array.from({ length: count }, (_, i) => (length * i) / (count - 1));
  const places: number[] = [];
  // What the builder set comes first: of two that are one, the grid's gives way.
  for (const at of [...told(tube), ...jumpsOf(tube), ...grid]) {
    const inside = at >= 0 && at <= length;
    if (inside && !places.some((known) => Math.abs(known - at) < same)) places.push(at);
  }
  return places.sort((a, b) => a - b);
}

export function sectionAt(tube: Tube, at: number): SectionAt {
  const { innerDiameter, plies } = pliesIn(tube, at);
  return { at, innerDiameter, section: wallSection({ innerDiameter, plies }) };
}

/**
 * The tube cut across at its stations and at `count` places besides, from end 0. Where the wall jumps, two stand at
 * one place: as it is before, and after.
 */
export function sectionsAlong(tube: Tube, count = 41): SectionAt[] {
  return keptBy(tube, 'sections', [count], () => {
    const jumps = jumpsOf(tube);
    return placesAlong(tube, count).flatMap((at) => {
      const after = sectionAt(tube, at);
      const jumped = jumps.some((jump) => Math.abs(jump - at) < same);
      return jumped ? [{ ...sectionAt(tube, at - justBefore), at }, after] : [after];
    });
  });
}

/** All of it, kg; nothing where a density is missing. */
export function tubeMassOf(tube: Tube): number | undefined {
  const sections = sectionsAlong(tube);
  let mass = 0;
  for (const [i, { at, section }] of sections.entries()) {
    const last = sections[i - 1];
    if (section.massPerLength === undefined) return undefined;
    if (last) mass += ((at - last.at) * (section.massPerLength + (last.section.massPerLength ?? 0))) / 2;
  }
  return mass;
}
