import { type Signal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { beside } from '#app/platform/beside.ts';
import type { Nest } from '#calc';
import type { ClothGroup } from './cloth-groups.ts';
import { type CuttingDraft, rollInput } from './cutting-draft.ts';
import { type CuttingProblem, cuttingProblem } from './cutting-words.ts';
import { type LaidOut, layOut, type NestInput, type RollSettings } from './lay-out.ts';

export interface Laid {
  out: LaidOut;
  settings: RollSettings;
}

export interface Laying {
  /** The last layout that could be made: it stays while a figure is wrong, or while another is made. */
  laid: Signal<Laid | undefined>;
  problem: Signal<CuttingProblem | undefined>;
  busy: Signal<boolean>;
}

/** Typing goes on for about so long between two figures, ms */
const typingPause = 200;

function settingsOf(group: ClothGroup, draft: CuttingDraft): RollSettings | undefined {
  const rollWidth = rollInput(draft, group.doc, group.cloth).si.value;
  const [mask, selvage, tubes] = [draft.mask, draft.selvage, draft.tubes].map((input) => input.si.value);
  const missing =
    rollWidth === undefined || mask === undefined || selvage === undefined || tubes === undefined;
  return missing ? undefined : { rollWidth, mask, selvage, tubes, spliced: draft.spliced.value };
}

function start(group: ClothGroup, settings: RollSettings, { laid, problem, busy }: Laying): () => void {
  const script = new Worker(new URL('./nest-worker.ts', import.meta.url), { type: 'module' });
  const layer = beside<NestInput, Nest>(script);
  busy.value = true;
  layOut(group.pieces, settings, layer.ask)
    .then((out) => {
      laid.value = { out, settings };
      problem.value = undefined;
    })
    .catch((error: Error) => {
      problem.value = cuttingProblem(error, settings);
    })
    .finally(() => {
      busy.value = false;
      layer.stop();
    });
  return layer.stop;
}

/** The pieces of a cloth on its roll, laid out anew when a figure changes. */
export function useLaidOut(group: ClothGroup, draft: CuttingDraft): Laying {
  const laying: Laying = {
    laid: useSignal<Laid | undefined>(undefined),
    problem: useSignal<CuttingProblem | undefined>(undefined),
    busy: useSignal(false),
  };
  const settings = settingsOf(group, draft);
  const pieces = group.pieces.flatMap((p) => [p.flat, p.warpAngle]);
  useEffect(() => {
    if (!settings) return;
    let stop = () => {};
    const begin = () => {
      stop = start(group, settings, laying);
    };
    const waiting = setTimeout(begin, laying.laid.peek() ? typingPause : 0);
    return () => {
      clearTimeout(waiting);
      stop();
    };
  }, [...Object.values(settings ?? {}), ...pieces]);
  return laying;
}
