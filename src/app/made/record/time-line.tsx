import { now } from '#app/state/now.ts';
import type { Fact } from '#shared/record/journal.ts';
import { formatClockTime, formatDay } from '#shared/units/time.ts';
import { Photo } from './photo.tsx';
import { type Subject, sayEntry } from './say-entry.ts';
import './time-line.css';

function Line({ subject, fact }: { subject: Subject; fact: Fact }) {
  const { entry } = fact;
  const { what, value } = sayEntry(subject, entry);
  const struck = fact.earlier.filter((e) => e.kind !== 'retracted').map((e) => sayEntry(subject, e));
  return (
    <li>
      <a class="time-line-row" href={`#/record/fix/${subject.header.id}/${fact.root}`}>
        <time dateTime={new Date(entry.happenedAt).toISOString()}>
          {formatClockTime(entry.happenedAt, entry.zone)}
        </time>
        <span class="time-line-text">
          {struck.map((s, i) => (
            <del key={i}>{s.value ?? s.what}</del>
          ))}
          {fact.retracted ? (
            <del>
              {what} {value}
            </del>
          ) : (
            <span>
              {what} {value && <strong>{value}</strong>}
            </span>
          )}
          {fact.retracted && <span class="time-line-mark">struck out</span>}
          {!fact.retracted && struck.length > 0 && <span class="time-line-mark">corrected</span>}
        </span>
      </a>
      {entry.kind === 'photo' && 'hash' in entry && !fact.retracted && (
        <Photo hash={String(entry.hash)} alt={what} />
      )}
    </li>
  );
}

function byDay(facts: readonly Fact[]): [string, Fact[]][] {
  const days = new Map<string, Fact[]>();
  for (const fact of facts) {
    const day = formatDay(fact.entry.happenedAt, fact.entry.zone, now.peek());
    days.set(day, [...(days.get(day) ?? []), fact]);
  }
  return [...days];
}

/** Everything that was entered, as it was lived; what was corrected stays, struck through. */
export function TimeLine({ subject }: { subject: Subject }) {
  return (
    <section class="time-line" aria-label="Time line">
      {byDay(subject.facts).map(([day, facts]) => (
        <div key={day}>
          <h3>{day}</h3>
          <ol>
            {facts.map((fact) => (
              <Line key={fact.root} subject={subject} fact={fact} />
            ))}
          </ol>
        </div>
      ))}
    </section>
  );
}
