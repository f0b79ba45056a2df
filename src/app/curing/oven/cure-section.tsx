import { Lines } from '#app/parts/figure.tsx';
import { Rule } from '#app/parts/rule.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { finishRows, sheetSays, stallSays } from './cure-words.ts';
import type { Finish, Stall } from './oven-finish.ts';
import type { OvenResults } from './oven-results.ts';
import { noCureSentence } from './oven-words.ts';

function Stalled({ stall }: { stall: Stall }) {
  const { title, says, why, now } = stallSays(stall);
  return (
    <Warning kind="amber" title={title} announce={stall.isNow}>
      <p>
        <strong>{says}</strong>
      </p>
      <p>{why}</p>
      <p>{now}</p>
    </Warning>
  );
}

interface Props {
  results: OvenResults;
  finish: Finish | undefined;
  now: number;
}

/** How far the data sheet's cure time is used, and when it will be. Never a degree of cure. */
export function CureSection({ results, finish, now }: Props) {
  const { cure } = results;
  if (!cure.known) return <p class="quiet">{noCureSentence(cure.why)}</p>;
  const percent = 100 * cure.share;
  const whole = Math.floor(percent + 1e-9);
  return (
    <section>
      <h2>Cure time used: {whole} %</h2>
      <Rule
        label={`Cure time used, by the data sheet: ${whole} %`}
        from={0}
        to={Math.max(100, Math.ceil(percent / 20) * 20)}
        value={percent}
        target={percent > 100 ? 100 : undefined}
        unit="%"
      />
      <p class="quiet small">{sheetSays(cure.slowest)}</p>
      {finish?.stall && <Stalled stall={finish.stall} />}
      {finish && <Lines rows={finishRows(finish, now)} />}
    </section>
  );
}
