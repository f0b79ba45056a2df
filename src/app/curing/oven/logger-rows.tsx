import { LinkButton } from '#app/parts/action.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Warning } from '#app/parts/warning.tsx';
import type { OvenState } from '#shared/record/oven-state.ts';
import { formatClockTime } from '#shared/units/time.ts';
import type { WithFiles } from './use-oven-results.ts';

function Missing({ names }: { names: readonly string[] }) {
  if (names.length === 0) return null;
  return (
    <Warning
      kind="amber"
      title={
        names.length === 1
          ? `${names[0]} is not on this phone`
          : `${names.length} files are not on this phone`
      }
    >
      What a logger read is made from its file, so nothing of it counts here. Choose the file again below, or
      restore a backup that holds it.
    </Warning>
  );
}

/** Files of a logger in this oven load, and the way to one more. */
export function LoggerRows({ state, read }: { state: OvenState; read: WithFiles }) {
  const { id, zone } = state.header;
  return (
    <section>
      <h2>Logger’s files</h2>
      <Missing names={read.missing} />
      {read.failed && (
        <Warning kind="amber" title="A logger’s file could not be read">
          What stands here is by the readings taken by hand. Open this oven load again.
        </Warning>
      )}
      {read.reading && <p role="status">The logger’s file is being read.</p>}
      {state.loggerFiles.length > 0 && (
        <Rows label="Logger’s files">
          {state.loggerFiles.map(({ entry, root }) => (
            <Row
              key={root}
              to={`/oven/${id}/logger/${root}`}
              title={entry.name}
              about={`${formatClockTime(entry.from, zone)} to ${formatClockTime(entry.until, zone)}`}
              value={entry.series.reduce((sum, s) => sum + s.readings, 0).toLocaleString('en-US')}
            />
          ))}
        </Rows>
      )}
      <div class="oven-links">
        <LinkButton to={`/oven/${id}/logger`}>Take in a logger’s file</LinkButton>
      </div>
    </section>
  );
}
