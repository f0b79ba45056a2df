import { Figures } from '#app/parts/figure.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { show } from '#app/state/show.ts';
import type { Answer } from './draft.ts';

/** Resin kept, resin to mix, cups: what the fields above come to. */
export function AnswerFigures({ answer }: { answer: Answer }) {
  if (!answer.ok) {
    return answer.says ? (
      <Warning kind="amber" title="No way to mix this">
        {answer.says}
      </Warning>
    ) : null;
  }
  const { kept, total, cups, each } = answer.recipe;
  return (
    <div role="status">
      <Figures
        items={[
          { value: show(total, 'mass'), label: 'resin to mix' },
          {
            value: `${cups} ${cups === 1 ? 'cup' : 'cups'}`,
            label: cups === 1 ? 'all at once' : `of ${show(each.total, 'mass')}`,
          },
          { value: show(kept, 'mass'), label: 'stays in the tube' },
        ]}
      />
    </div>
  );
}
