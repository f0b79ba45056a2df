import { BigFigure, Figures, Lines } from '#app/parts/figure.tsx';
import { show, showSplit } from '#app/state/show.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import type { MixPlan } from './mix-plan.ts';

/** What stays in the part, what to mix for it, and in how many cups. */
export function PlanFigures({ plan, resin }: { plan: MixPlan; resin: ResinSystem }) {
  const { kept, mixed, left, cups, each } = plan;
  const figures = [
    ...(cups > 0 ? [{ value: String(cups), label: cups === 1 ? 'cup' : 'even cups' }] : []),
    { value: show(kept, 'mass'), label: 'stays in the part' },
    ...(mixed > 0 && cups > 0 ? [{ value: show(mixed, 'mass'), label: 'mixed so far' }] : []),
  ];
  return (
    <>
      <BigFigure {...showSplit(cups > 0 ? left : mixed, 'mass')} />
      <Figures items={figures} />
      {cups > 0 && (
        <Lines
          head={['', 'resin', resin.hardener, 'in all']}
          rows={[
            [
              cups === 1 ? 'The cup' : 'Each cup',
              show(each.resin, 'mass'),
              show(each.hardener, 'mass'),
              show(each.total, 'mass'),
            ],
          ]}
        />
      )}
    </>
  );
}
