import type { OvenState } from '#shared/record/oven-state.ts';
import { ExplainCure, ExplainFinish, ExplainHold, ExplainTg } from './cure-explained.tsx';
import { ExplainTape } from './heat-sections.tsx';
import type { Finish } from './oven-finish.ts';
import type { OvenNow } from './oven-now.ts';
import type { OvenResults } from './oven-results.ts';
import type { NamedTape } from './tape-begins.ts';

interface Props {
  state: OvenState;
  results: OvenResults;
  at: OvenNow;
  finish: Finish | undefined;
  tapes: readonly NamedTape[];
  now: number;
}

/** Where each number of an oven load comes from, in one place. */
export function Reckoned({ state, results, at, finish, tapes, now }: Props) {
  const { cure, heat, series } = results;
  return (
    <details class="more">
      <summary>How is it reckoned?</summary>
      <div class="oven-links">
        {cure.known && <ExplainCure results={results} cure={cure} />}
        {cure.known && finish && <ExplainFinish cure={cure} finish={finish} now={now} />}
        {heat && <ExplainTg heat={heat} byPart={series.by === 'part'} />}
        <ExplainHold results={results} at={at} low={state.header.schedule.holdLow} />
        {tapes.map(({ tape, name }) => (
          <ExplainTape key={tape.build} tape={tape} name={name} />
        ))}
      </div>
    </details>
  );
}
