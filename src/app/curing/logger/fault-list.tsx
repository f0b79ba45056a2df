import { CheckRow } from '#app/curing/oven/check-row.tsx';
import { now } from '#app/state/now.ts';
import type { Fault } from './fault.ts';
import { faultAbout, faultTitle } from './fault-words.ts';
import { faultKey, isRepaired } from './faults.ts';
import type { Preview } from './logger-draft.ts';

interface Props {
  preview: Preview;
  zone: number;
  onChoose: (fault: Fault, isDone: boolean) => void;
}

/** What is wrong with the file, each with what is done about it; a tick that can be taken away where that is a choice. */
export function FaultList({ preview, zone, onChoose }: Props) {
  const { tried, choices, look, columns } = preview;
  const faults = tried?.faults ?? [];
  if (!tried) return null;
  if (faults.length === 0) {
    return (
      <section>
        <h2>Nothing wrong with it</h2>
        <p>No gaps, no jumps of the clock, no dead sensor.</p>
      </section>
    );
  }
  return (
    <section>
      <h2>
        {faults.length} {faults.length === 1 ? 'thing is' : 'things are'} wrong with it
      </h2>
      <p class="quiet">
        The file is kept as it is. What is ticked is left out or put right in what is reckoned.
      </p>
      <ul class="oven-rows" aria-label="What is wrong with it">
        {faults.map((fault) => {
          const name = columns.find((c) => c.column === fault.column)?.name ?? 'A sensor';
          const isDone = isRepaired(fault, choices);
          const about = faultAbout(fault, isDone, { look, zone, now: now.peek() });
          const title = faultTitle(fault, name);
          if (!fault.repair) {
            return (
              <li key={faultKey(fault)} class="logger-fault">
                <span class="check-title">{title}</span>
                <span class="check-about">{about}</span>
              </li>
            );
          }
          return (
            <CheckRow
              key={faultKey(fault)}
              checked={isDone}
              about={about}
              onChange={() => onChoose(fault, !isDone)}
            >
              {title}
            </CheckRow>
          );
        })}
      </ul>
    </section>
  );
}
