import { Warning } from '#app/parts/warning.tsx';
import type { Trouble } from './troubles.ts';
import './loads.css';

/** What is wrong as a warning, what is only missing as what comes next. */
export function Troubles({ troubles }: { troubles: readonly Trouble[] }) {
  const wrong = troubles.filter(({ missing }) => !missing);
  const missing = troubles.filter((t) => t.missing);
  return (
    <>
      {wrong.length > 0 && (
        <Warning kind="amber" title="This cannot be checked">
          <ul class="loads-troubles">
            {wrong.map(({ says }) => (
              <li key={says}>{says}</li>
            ))}
          </ul>
        </Warning>
      )}
      {missing.length > 0 && (
        <ul class="loads-troubles" aria-label="What is missing">
          {missing.map(({ says }) => (
            <li key={says}>{says}</li>
          ))}
        </ul>
      )}
    </>
  );
}
