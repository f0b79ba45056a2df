import { findDoc } from '#app/state/documents.ts';
import type { Core } from '#shared/record/core.ts';
import type { Mandrel } from '#shared/record/mandrel.ts';
import type { OvenLimit } from '#shared/record/oven-load.ts';
import type { Piece } from '#shared/record/piece.ts';
import { limitSource } from '#shared/reference/limit-sources.ts';

/** Of the core in a wall: the part feels it. */
export function coreLimits(cores: readonly Core[]): OvenLimit[] {
  const [first, ...others] = cores;
  if (!first) return [];
  const softest = others.reduce(
    (least, core) => (core.highestTemperature < least.highestTemperature ? core : least),
    first,
  );
  const highest = softest.highestTemperature;
  return [{ name: 'core', sees: 'part', highest, source: limitSource(softest) }];
}

/** Of what sits on a mandrel's ends: the air feels it. */
export function mandrelLimits({ name, plugsTo, maskingTo }: Mandrel): OvenLimit[] {
  const source = `As entered with the mandrel on your shelf: ${name}.`;
  return [
    ...(plugsTo === undefined
      ? []
      : [{ name: 'mandrel plugs', sees: 'air', highest: plugsTo, source } as const]),
    ...(maskingTo === undefined
      ? []
      : [{ name: 'masking', sees: 'air', highest: maskingTo, source } as const]),
  ];
}

/** What goes into the oven beside tape, release and resin, as the shelf has it now. */
export function limitsBeside(pieces: readonly Piece[] | undefined, mandrel: string | undefined): OvenLimit[] {
  const cores = (pieces ?? [])
    .filter((piece) => piece.kind === 'core')
    .flatMap((piece) => findDoc('core', piece.material)?.body ?? []);
  const found = findDoc('mandrel', mandrel)?.body;
  return [...coreLimits(cores), ...(found ? mandrelLimits(found) : [])];
}
