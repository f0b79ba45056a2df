import { useMemo } from 'preact/hooks';
import { CureChart } from '#app/curing/oven/cure-chart.tsx';
import type { OvenSeries, Series } from '#app/curing/oven/oven-series.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { notUsed, seesOf } from './channel-choices.ts';
import type { Preview } from './logger-draft.ts';
import { litAt } from './subject.ts';

function seriesOf({ tried, columns }: Preview, state: OvenState): OvenSeries {
  const all = (tried?.series ?? []).flatMap(({ column, picture }): Series[] => {
    const choice = columns.find((c) => c.column === column);
    if (!choice || choice.to === notUsed) return [];
    const known = state.readings.find((r) => r.channel.id === choice.to)?.channel;
    const channel = known ?? { id: `column ${column}`, sees: seesOf(choice.to, state), name: choice.name };
    return [{ channel, readings: picture }];
  });
  const seeing = (sees: string) => all.filter((s) => s.channel.sees === sees);
  const longest = all.reduce<Series['readings']>(
    (a, s) => (s.readings.length > a.length ? s.readings : a),
    [],
  );
  const [parts, air] = [seeing('part'), seeing('air')];
  return {
    from: litAt(state),
    air,
    parts,
    elements: seeing('element'),
    by: parts.length > 0 ? 'part' : 'air',
    judged: parts.length > 0 ? parts : air,
    coldest: longest,
    hottest: longest,
  };
}

/** The file as it would be taken in, against the schedule. */
export function PreviewChart({ preview, state }: { preview: Preview; state: OvenState }) {
  const { tried, columns } = preview;
  return useMemo(() => {
    const series = seriesOf(preview, state);
    const until = series.hottest.at(-1)?.time ?? 0;
    return <CureChart header={state.header} series={series} until={until} />;
  }, [tried, columns, state]);
}
