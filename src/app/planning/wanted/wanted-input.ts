import type { Tube } from '#app/planning/carry/tube-of-plan.ts';
import { casesOfPlan, supportsOfPlan } from '#app/planning/loads/of-plan.ts';
import { stationsOnTube } from '#app/planning/wall/shape-edits.ts';
import { type PieceMaterial, pliesAt, type Roll, type TubePly, type WantedInput, wovenPlies } from '#calc';
import type { LoadPlan } from '#shared/record/load-plan.ts';
import { dropTaper } from '#shared/reference/strengths.ts';

/** What is asked of the search besides the loads. */
export interface Asking {
  /** Number of the piece in wrap order whose plies are varied. */
  piece: number;
  /** Pieces that it takes the place of. */
  instead: readonly number[];
  least: number;
  most: number;
}

const hair = 1e-3;

/** Pieces of cloth that run along the whole tube: only such a one can be given other plies anywhere. */
export function variable({ wall, length }: Tube): number[] {
  return wall.pieces.flatMap((piece, i) => {
    const stations = stationsOnTube(piece);
    const whole = (stations[0]?.at ?? 1) < hair && (stations.at(-1)?.at ?? 0) > length - hair;
    return piece.kind === 'cloth' && whole ? [i] : [];
  });
}

/** The cloth there is most of among them, and what thickens it here and there with the same cloth gives way to it. */
export function firstAsking(tube: Tube, cloth: string): Asking | undefined {
  const whole = variable(tube);
  const of = (i: number) => tube.wall.pieces[i]?.material ?? cloth;
  const piece = whole.find((i) => of(i) === cloth) ?? whole[0];
  if (piece === undefined) return undefined;
  const instead = tube.wall.pieces.flatMap((p, i) =>
    i !== piece && p.kind === 'cloth' && of(i) === of(piece) ? [i] : [],
  );
  return { piece, instead, least: 2, most: 12 };
}

/** Nearer than this share of the tube two stations are one. */
const nearest = 1 / 60;
/** Even places besides those where it is held or a load stands. */
const evenPlaces = 25;

/** Where plies are asked for, m: the ends, every place where something holds or bears, and an even grid. */
export function placesOf(length: number, { supports, cases }: LoadPlan): number[] {
  const told = [
    0,
    length,
    ...supports.flatMap((s) => (s.holds === 'sleeve' ? [s.at, s.at + s.length] : [s.at])),
    ...cases.flatMap(({ loads }) => loads.flatMap((l) => ('at' in l ? [l.at] : []))),
  ];
  const grid = Array.from({ length: evenPlaces }, (_, i) => (length * i) / (evenPlaces - 1));
  const places: number[] = [];
  for (const at of [...told, ...grid]) {
    const inside = at >= 0 && at <= length;
    if (inside && places.every((known) => Math.abs(known - at) > nearest * length)) places.push(at);
  }
  return places.sort((a, b) => a - b);
}

/** Of some pieces of a roll, the plies that lie at a place. */
function pliesOf(tube: Tube, pieces: readonly number[], at: number): TubePly[] {
  if (pieces.length === 0) return [];
  const roll: Roll = { ...tube.roll, pieces: pieces.flatMap((i) => tube.roll.pieces[i] ?? []) };
  return pliesAt({ roll, at, materials: pieces.flatMap((i) => tube.materials[i] ?? []) }).plies;
}

function onePly(material: PieceMaterial | undefined, angle: number, thickness: number): TubePly[] {
  if (!material || material.carries === false) return [];
  const { crimpFactor, ...own } = material;
  if (crimpFactor === undefined) return [{ ...own, angle, thickness }];
  return wovenPlies({ material: own, crimpFactor, angle, thickness });
}

/** Everything the search needs; undefined as long as the plan's loads do not say it. */
export function wantedInput(tube: Tube, loads: LoadPlan, asking: Asking): WantedInput | undefined {
  const { piece, instead, least, most } = asking;
  const cases = casesOfPlan(loads);
  const spec = tube.roll.pieces[piece]?.spec;
  const { safetyFactor, freeLength = tube.length, mostDeflection, dropTaper: taper = dropTaper } = loads;
  if (!cases || safetyFactor === undefined || !spec) return undefined;
  const stay = tube.roll.pieces.map((_, i) => i).filter((i) => i !== piece && !instead.includes(i));
  const [under, over] = [stay.filter((i) => i < piece), stay.filter((i) => i > piece)];
  return {
    stations: placesOf(tube.length, loads).map((at) => ({
      at,
      innerDiameter: pliesAt({ roll: tube.roll, at, materials: tube.materials }).innerDiameter,
      inside: pliesOf(tube, under, at),
      outside: pliesOf(tube, over, at),
    })),
    always: [],
    ply: onePly(tube.materials[piece], spec.angle, spec.thickness),
    least,
    most: Math.max(least, most),
    supports: supportsOfPlan(loads),
    cases,
    safetyFactor,
    freeLength,
    deflectionLimit: mostDeflection,
    dropLength: taper * spec.thickness,
    onePeak: true,
  };
}

/** Plies there today of the pieces that are varied or give way, at each place; not always whole. */
export function pliesToday(tube: Tube, { piece, instead }: Asking, places: readonly number[]): number[] {
  const { at, pieces } = tube.roll;
  return places.map((place) => {
    let i = 0;
    while (i + 1 < at.length && (at[i] ?? 0) < place - 1e-9) i += 1;
    return [piece, ...instead].reduce((sum, k) => sum + (pieces[k]?.plies[i] ?? 0), 0);
  });
}
