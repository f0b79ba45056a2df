import { useSignal } from '@preact/signals';
import { Action, Secondary } from '#app/parts/action.tsx';
import { BigFigure } from '#app/parts/figure.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { go } from '#app/router.ts';
import { act } from './act.ts';
import { filmCount } from './films.ts';
import type { SheetProps } from './sheet-props.ts';
import { roleTick } from './ticks.ts';

const most = 99;

/** Films counted in or out by two big keys. The step is ticked when the count says what it should. */
export function FilmsSheet({
  state,
  round,
  direction,
  newId,
  onClose,
}: SheetProps & { direction: 'in' | 'out' }) {
  const counted = filmCount(state, round);
  const count = useSignal(counted[direction] ?? 0);
  const laid = direction === 'out' ? counted.in : undefined;
  const right = laid === undefined || count.value === laid;
  const write = async () => {
    const role = direction === 'in' ? 'filmsIn' : 'filmsOut';
    const subject = state.header.id;
    const drafts = [
      { kind: 'filmCount', subject, direction, count: count.value, round } as const,
      ...(right ? roleTick(state, role, { round, newId }) : []),
    ];
    return act(drafts, { said: `Films ${direction}: ${count.value}` });
  };
  const press = async () => {
    if (await write()) onClose();
  };
  // What was counted before the scale was opened must not be counted twice.
  const weigh = async () => {
    const changed = count.value > 0 && count.value !== counted.in;
    if (!changed || (await write())) go(`/weigh/${state.header.id}/wetFilms`);
  };
  return (
    <Sheet
      title={direction === 'in' ? 'Films laid in' : 'Films taken out'}
      onClose={onClose}
      actions={
        <>
          {direction === 'in' && (
            <Secondary onPress={weigh}>
              {count.value > 0 ? `${count.value} in, and weigh them` : 'Weigh the films'}
            </Secondary>
          )}
          <Secondary onPress={onClose}>Close</Secondary>
          <Action onPress={press} not={count.value === 0 ? 'Press + for each film' : undefined}>
            {laid === undefined
              ? `${count.value} ${count.value === 1 ? 'film' : 'films'} ${direction}`
              : `${count.value} of ${laid} films out`}
          </Action>
        </>
      }
    >
      <div class="count">
        <button
          type="button"
          aria-label="One film less"
          onClick={() => (count.value = Math.max(0, count.value - 1))}
        >
          −
        </button>
        <div aria-live="polite">
          <BigFigure figure={String(count.value)} unit={laid === undefined ? '' : `of ${laid}`} />
        </div>
        <button
          type="button"
          aria-label="One film more"
          onClick={() => (count.value = Math.min(most, count.value + 1))}
        >
          +
        </button>
      </div>
      {laid !== undefined && count.value > laid && (
        <Warning kind="amber" title="More out than went in">
          Count both again: one of the two is wrong.
        </Warning>
      )}
      {laid !== undefined && count.value > 0 && count.value < laid && (
        <Warning kind="stop" title={`${laid - count.value} still in there`}>
          A film rolled into the wall ruins the tube. Look for it before tape goes on.
        </Warning>
      )}
    </Sheet>
  );
}
