import { csvText } from '#app/phone/data/csv.ts';
import { fileStamp, isoWithOffset } from '#app/phone/data/file-words.ts';
import { zoneAt } from '#app/state/now.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { LoadOnPaper } from './loads.ts';
import { type PaperLine, paperLines } from './time-line-rows.ts';

const nameOf = ({ header }: BuildState, at: number, ext: string): string =>
  `tubewright-${header.name.toLowerCase().replace(/[^a-z0-9]+/g, '-')}-${header.number}-${fileStamp(at, zoneAt(at))}.${ext}`;

interface TableLine extends PaperLine {
  of: string;
}

/** The whole time line of a tube and its oven loads as one table. */
export async function lineTable(build: BuildState, loads: readonly LoadOnPaper[]): Promise<File> {
  const at = Date.now();
  const of = `${build.header.name} no. ${build.header.number}`;
  const rows: TableLine[] = [
    ...paperLines(build).map((l) => ({ ...l, of })),
    ...loads.flatMap(({ state }) =>
      paperLines(state).map((l) => ({ ...l, of: `Oven load ${state.header.number}` })),
    ),
  ];
  const text = await csvText<TableLine>(
    [
      { head: 'Of', cell: (l) => l.of },
      { head: 'When', cell: (l) => isoWithOffset(l.happenedAt, l.zone) },
      { head: 'What', cell: (l) => l.what },
      { head: 'Value', cell: (l) => l.value },
      { head: 'Before it was corrected', cell: (l) => l.before.join(' | ') },
      { head: 'Struck out', cell: (l) => (l.struck ? 'yes' : '') },
    ],
    rows,
  );
  return new File([text], nameOf(build, at, 'csv'), { type: 'text/csv' });
}

/** The same as it is kept, in SI: headers, and every fact with what it replaced. */
export function recordJson(build: BuildState, loads: readonly LoadOnPaper[]): File {
  const at = Date.now();
  const whole = {
    what: 'tubewright build record',
    at: new Date(at).toISOString(),
    units: 'SI: kg, m, s, K; times in ms since 1970-01-01 UTC',
    build: { header: build.header, facts: build.facts },
    ovenLoads: loads.map(({ state }) => ({ header: state.header, facts: state.facts })),
  };
  // Text, since share sheets refuse JSON.
  return new File([JSON.stringify(whole, null, 1)], nameOf(build, at, 'json.txt'), { type: 'text/plain' });
}
