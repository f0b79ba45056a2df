import { type Signal, signal } from '@preact/signals';
import { SelectField } from '#app/parts/field.tsx';
import { Warning } from '#app/parts/warning.tsx';
import type { MakingDraft } from '#app/planning/making/draft.ts';
import { findDoc } from '#app/state/documents.ts';
import { now } from '#app/state/now.ts';
import type { BuildHeader } from '#shared/record/build.ts';
import type { EntryDraft } from '#shared/record/entry.ts';
import { chooseLot, type LotOnShelf, lotsFor, type Need, shortBy } from './choose-lot.ts';
import { leftWords, lotWords, showAmount } from './lot-words.ts';
import { TooOld } from './too-old.tsx';
import type { ShelfLots } from './use-lots.ts';

/** What the builder chose instead; '' is no lot. It lives as long as what is typed beside it. */
const chosen = new WeakMap<MakingDraft, Signal<Readonly<Record<string, string>>>>();

function chosenFor(draft: MakingDraft) {
  const known = chosen.get(draft) ?? signal<Readonly<Record<string, string>>>({});
  chosen.set(draft, known);
  return known;
}

export const needKey = ({ of, item }: Pick<Need, 'of' | 'item'>) => `${of} ${item}`;

function taken(draft: MakingDraft, need: Need, { lots }: ShelfLots, at: number): LotOnShelf | undefined {
  const wanted = chosenFor(draft).value[needKey(need)];
  if (wanted === '') return undefined;
  return lotsFor(need, lots).find((l) => l.doc === wanted) ?? chooseLot(need, lots, at);
}

/** What a lot cannot give, or should not: what, why, what to do now. */
export function LotDoubt({ need, lot }: { need: Need; lot: LotOnShelf }) {
  const short = shortBy(need, lot);
  const { name } = lot.lot;
  return (
    <>
      {short !== undefined && (
        <Warning kind="amber" title={`${name} is short by ${showAmount(need.of, short)}`} announce>
          It has {showAmount(need.of, Math.max(0, lot.left))}, this takes{' '}
          {showAmount(need.of, need.amount ?? 0)}. Have more at hand before you begin, or count it if the
          record is wrong.
        </Warning>
      )}
      <TooOld lot={lot.lot} />
    </>
  );
}

const nameOf = ({ of, item }: Need) => findDoc(of === 'hardener' ? 'resin' : of, item)?.body.name ?? '';

/** 'Cloth from', or by its name where a wall takes several. */
export function labelOf(need: Need, all: readonly Need[]): string {
  const several = all.filter((n) => n.of === need.of).length > 1;
  return `${several ? nameOf(need) : lotWords[need.of].thing} from`;
}

interface PickProps {
  label: string;
  need: Need;
  lots: readonly LotOnShelf[];
  value: string;
  onChange: (doc: string) => void;
}

export function LotPick({ label, need, lots, value, onChange }: PickProps) {
  return (
    <SelectField
      label={label}
      value={value}
      options={[
        ...lotsFor(need, lots).map(({ doc, lot, left }) => ({
          value: doc,
          label: `${lot.name}, ${leftWords(need.of, left)}`,
        })),
        { value: '', label: 'Not from a lot' },
      ]}
      hint={need.amount === undefined ? undefined : `This takes ${showAmount(need.of, need.amount)}`}
      onChange={onChange}
    />
  );
}

interface Props {
  draft: MakingDraft;
  needs: readonly Need[];
  shelf: ShelfLots | undefined;
}

/** Which roll, cans and reel it will be made from. Nothing is asked where the shelf has no lots. */
export function StartLots({ draft, needs, shelf }: Props) {
  const withLots = shelf ? needs.filter((n) => lotsFor(n, shelf.lots).length > 0) : [];
  if (!shelf || withLots.length === 0) return null;
  const picked = withLots.map((need) => ({ need, lot: taken(draft, need, shelf, now.value) }));
  const words = picked.flatMap(({ lot }) => lot?.lot.name ?? []).join(', ');
  return (
    <>
      {picked.map(({ need, lot }) => lot && <LotDoubt key={needKey(need)} need={need} lot={lot} />)}
      <details class="more">
        <summary>Taken from: {words || 'no lot'}</summary>
        {picked.map(({ need, lot }) => (
          <LotPick
            key={needKey(need)}
            label={labelOf(need, withLots)}
            need={need}
            lots={shelf.lots}
            value={lot?.doc ?? ''}
            onChange={(doc) => {
              const all = chosenFor(draft);
              all.value = { ...all.value, [needKey(need)]: doc };
            }}
          />
        ))}
      </details>
    </>
  );
}

/** The entry that a build takes a need from this lot; several cloths are weighed as one, so each says its share. */
export function drawnDraft(subject: string, need: Need, lot: LotOnShelf, needs: readonly Need[]): EntryDraft {
  const alone = needs.filter((n) => n.of === need.of).length === 1;
  const says = need.of === 'tape' || (need.of === 'cloth' && !alone);
  return {
    kind: 'lotDrawn',
    subject,
    of: need.of,
    lot: lot.doc,
    label: lot.lot.name,
    item: need.item,
    ...(says && need.amount !== undefined && { amount: need.amount }),
  };
}

/** Written with the header: what this build draws from now on. */
export function startDraws(
  header: BuildHeader,
  { draft, needs, shelf }: Props & { shelf: ShelfLots },
): EntryDraft[] {
  return needs.flatMap((need) => {
    const lot = taken(draft, need, shelf, header.startedAt);
    return lot ? [{ ...drawnDraft(header.id, need, lot, needs), happenedAt: header.startedAt }] : [];
  });
}

/** What the header keeps, so that lots can be told later. */
export function takesOf(needs: readonly Need[]): BuildHeader['takes'] {
  const resin = needs.find((n) => n.of === 'resin');
  const tape = needs.find((n) => n.of === 'tape');
  const cloths = needs.flatMap(({ of, item, amount }) =>
    of === 'cloth' && amount !== undefined && amount > 0 ? [{ item, area: amount }] : [],
  );
  return resin && { cloths, resin: resin.item, ...(tape && { tape: tape.item }) };
}
