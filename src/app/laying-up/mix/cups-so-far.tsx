import { show } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { formatClockTime } from '#shared/units/time.ts';
import { CupEmptied } from './cup-buttons.tsx';
import { cupError } from './cup-phase.ts';
import type { MixOfBuild, RoundCup } from './mix-of-build.ts';
import { offWords } from './mix-words.ts';

function fate({ cup, phase }: RoundCup): string {
  if (cup.discardedAt !== undefined) return `thrown out ${formatClockTime(cup.discardedAt)}`;
  if (cup.emptyAt !== undefined) return `on the cloth ${formatClockTime(cup.emptyAt)}`;
  return phase === 'mixed' ? 'still in its cup' : 'being weighed';
}

/** The cups of this round: what went in, how true, and what became of them. */
export function CupsSoFar({ state, mix }: { state: BuildState; mix: MixOfBuild }) {
  if (mix.cups.length === 0) return null;
  return (
    <section class="cups-so-far">
      <h2>Cups so far</h2>
      <ul>
        {mix.cups.map((one) => {
          const error = cupError(one.cup, mix.mixing);
          return (
            <li key={one.cup.cup}>
              <strong>
                Cup {one.cup.number}: {show(one.cup.resin + one.cup.hardener, 'mass')}
              </strong>
              <span>
                {error === undefined ? '' : `${offWords(error)}, `}
                {fate(one)}
              </span>
            </li>
          );
        })}
      </ul>
      {mix.inCup.map((cup) => (
        <CupEmptied key={cup.cup} state={state} cup={cup} />
      ))}
    </section>
  );
}
