import type { Channel } from '#shared/record/oven-load.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import type { HeatColumn } from './columns.ts';

export const notUsed = 'none';
/** What a column becomes that no channel of the oven load stands for yet. */
const fresh = {
  'new air': { sees: 'air', label: 'Air, another place' },
  'new part': { sees: 'part', label: 'A part, another sensor' },
  'new element': { sees: 'element', label: 'Heating element' },
} as const;
type Fresh = keyof typeof fresh;
const isFresh = (choice: string): choice is Fresh => choice in fresh;

export interface ColumnChoice extends HeatColumn {
  /** Id of a channel, one of the new ones, or not used. */
  to: string;
}

const channelsOf = (state: OvenState): Channel[] => state.readings.map((r) => r.channel);

export function choicesOf(state: OvenState): { value: string; label: string }[] {
  return [
    ...channelsOf(state).map((c) => ({ value: c.id, label: c.name })),
    ...Object.entries(fresh).map(([value, { label }]) => ({ value, label })),
    { value: notUsed, label: 'Not taken in' },
  ];
}

/** A head that names a tube is the sensor on that tube. */
const isNamed = (channel: Channel, column: HeatColumn): boolean => {
  const bare = channel.name.replace(/ no\. \d+$/, '').toLowerCase();
  return channel.sees !== 'air' && column.name.toLowerCase().includes(bare);
};

/** Each column to a channel of the oven load that sees the same, in their order; the rest are new ones. */
export function assigned(columns: readonly HeatColumn[], state: OvenState): ColumnChoice[] {
  const left = new Set(channelsOf(state));
  const take = (found: Channel | undefined): string | undefined => {
    if (found) left.delete(found);
    return found?.id;
  };
  const named = new Map(
    columns.map((column) => [column.column, take([...left].find((channel) => isNamed(channel, column)))]),
  );
  return columns.map((column) => {
    const { sees } = column;
    if (sees === undefined) return { ...column, to: notUsed };
    const to = named.get(column.column) ?? take([...left].find((c) => c.sees === sees));
    return { ...column, to: to ?? `new ${sees}` };
  });
}

/** The channels that these choices bring, and which column goes to which. */
export function broughtBy(
  columns: readonly ColumnChoice[],
  newId: () => string,
): { channels: Channel[]; to: Map<number, string> } {
  const channels: Channel[] = [];
  const to = new Map<number, string>();
  for (const { column, to: choice, name } of columns) {
    if (choice === notUsed) continue;
    if (!isFresh(choice)) {
      to.set(column, choice);
      continue;
    }
    const channel: Channel = { id: newId(), sees: fresh[choice].sees, name };
    channels.push(channel);
    to.set(column, channel.id);
  }
  return { channels, to };
}

export function seesOf(choice: string, state: OvenState): Channel['sees'] {
  if (isFresh(choice)) return fresh[choice].sees;
  return channelsOf(state).find((c) => c.id === choice)?.sees ?? 'part';
}
