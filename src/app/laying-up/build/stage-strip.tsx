import { useId } from 'preact/hooks';
import type { StageState } from '#shared/record/route-state.ts';

interface Props {
  stages: readonly StageState[];
  shown: StageState;
}

/** The route as a rule: a division a stage, inked as far as it is done, a mark over the one shown. */
export function StageStrip({ stages, shown }: Props) {
  const done = stages.filter((s) => s.done).length;
  const width = 100 / stages.length;
  const at = stages.indexOf(shown);
  const mark = useId();
  return (
    <svg
      class="stage-strip"
      width="100%"
      height="26"
      role="img"
      aria-label={`${done} of ${stages.length} stages done`}
    >
      {stages.map((s, i) => {
        const share = s.steps.length === 0 ? 1 : s.steps.filter((step) => step.done).length / s.steps.length;
        return (
          <rect
            key={s.key}
            class={s.done ? 'stage-strip-done' : 'stage-strip-begun'}
            x={`${i * width}%`}
            width={`${share * width}%`}
            y="9"
            height="12"
          />
        );
      })}
      {stages.slice(1).map((s, i) => (
        <line
          key={s.key}
          class="stage-strip-tick"
          x1={`${(i + 1) * width}%`}
          x2={`${(i + 1) * width}%`}
          y1="9"
          y2="21"
        />
      ))}
      <rect class="stage-strip-frame" x="0.75" width="99.5%" y="9" height="12" />
      <defs>
        <path id={mark} class="stage-strip-mark" d="M-7 0H7L0 9Z" />
      </defs>
      <use href={`#${mark}`} x={`${(at + 0.5) * width}%`} />
    </svg>
  );
}
