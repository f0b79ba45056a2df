import { docsOf } from '#app/state/documents.ts';
import { lotsInUse } from '#app/state/draws.ts';
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
  const used = kinds.flatMap((of) => lotsInUse(lots, of).flat());
  if (used.length > 0) return `From ${used.map((u) => u.entry.label).join(', ')}: took another?`;
  const items = new Set([...(takes?.cloths.map((c) => c.item) ?? []), takes?.resin, takes?.tape]);
  const any = docsOf('lot').some(({ body }) => kinds.includes(body.of) && items.has(body.item));
  return any ? 'Say which lot it is from' : undefined;
}
