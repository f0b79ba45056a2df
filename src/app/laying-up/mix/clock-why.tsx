import { whyWords } from '#app/laying-up/clocks/clock-words.ts';
import { isMixed, lastsOnFilm, whyOf } from '#app/laying-up/clocks/cup-clock.ts';
import { Explain } from '#app/parts/explain.tsx';
import { now } from '#app/state/now.ts';
import { show } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { CupState } from '#shared/record/cup-state.ts';
import { formatNumber } from '#shared/units/format.ts';
import { formatClockTime, formatDuration } from '#shared/units/time.ts';
import { ReadAgain } from './read-again.tsx';

/** Why this cup's clock and its tape deadline stand where they do, and what moves them. */
export function ClockWhy({ state, cup }: { state: BuildState; cup: CupState }) {
  if (!isMixed(cup)) return null;
  const why = whyOf(state, cup);
  const tape = cup.hardenerAt + 1000 * lastsOnFilm(state, cup, cup.emptyAt ?? now.value);
  return (
    <>
      {why && <p>{whyWords(why)}</p>}
      <ReadAgain state={state} />
      {why && cup.basis && (
        <Explain
          of="Tape all on by"
          formula="∫ dt/L cup + ∫ dt/L film = 1"
          values={[
            ['In the cup, L', formatDuration(cup.usableLife)],
            ['reckoned at', show(cup.basis.resin, 'temperature', 0)],
            ['Resin as last read', show(why.temperature, 'temperature', 0)],
            ['L in the cup now', formatDuration(why.lasts)],
            ['On a film, L', formatDuration(cup.basis.film)],
            ['Activation energy', `${formatNumber(cup.basis.energy / 1000, 0)} kJ/mol`],
            ['Tape all on by', formatClockTime(tape)],
          ]}
          source="the data sheet’s thin-film time where it has one, else twice the cup; common practice, no source"
          sure="It moves with every temperature you enter, and comes nearer while the resin stands in its cup. Resin that strings is gelling, whatever the clock says."
        />
      )}
    </>
  );
}
