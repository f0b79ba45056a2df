import type { Stretch } from '#app/curing/oven/oven-schedule.ts';
import { show } from '#app/state/show.ts';
import type { CureStage } from '#shared/record/cure-schedule.ts';
import { formatDuration } from '#shared/units/time.ts';
import { showRate } from './rate-words.ts';

export const kindWords: Record<CureStage['kind'], string> = { ramp: 'Ramp', hold: 'Hold', cool: 'Cool' };

/** 'Ramp to 66 °C', 'Hold 3 h' */
export function stageTitle(stage: CureStage): string {
  if (stage.kind === 'hold') return `Hold ${formatDuration(stage.lasts)}`;
  return `${kindWords[stage.kind]} to ${show(stage.to, 'temperature')}`;
}

/** '2 °C/min, 22 min', 'at 66 °C, off the mandrel' */
export function stageAbout(stage: CureStage, { from, to, temperature }: Stretch): string {
  const off = stage.offMandrel ? ', off the mandrel' : '';
  if (stage.kind === 'hold') return `at ${show(temperature, 'temperature')}${off}`;
  return `${showRate(stage.rate)}, takes ${formatDuration(to - from)}${off}`;
}
