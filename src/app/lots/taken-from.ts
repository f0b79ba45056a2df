import { docsOf } from '#app/state/documents.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { StageName } from '#shared/record/checklist.ts';
import type { LotKind } from '#shared/record/lot.ts';

const ofStage: Partial<Record<StageName, readonly LotKind[]>> = {
  cut: ['cloth'],
  mix: ['resin', 'hardener'],
  wetOut: ['resin', 'hardener'],
  shrinkTape: ['tape'],
};

/** 'Cloth from Roll 2: took another?'; undefined where a stage takes nothing that the shelf has lots of. */
export function takenFrom({ lots, header: { takes } }: BuildState, stage: StageName): string | undefined {
  const kinds = ofStage[stage];
  if (!kinds) return undefined;
  const last = new Map(
    lots.filter((l) => kinds.includes(l.entry.of)).map(({ entry: e }) => [`${e.of} ${e.item}`, e.label]),
  );
  if (last.size > 0) return `From ${[...last.values()].join(', ')}: took another?`;
  const items = new Set([...(takes?.cloths.map((c) => c.item) ?? []), takes?.resin, takes?.tape]);
  const any = docsOf('lot').some(({ body }) => kinds.includes(body.of) && items.has(body.item));
  return any ? 'Say which lot it is from' : undefined;
}
