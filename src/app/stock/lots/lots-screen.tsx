import { LinkButton } from '#app/parts/action.tsx';
import { Ask } from '#app/parts/ask.tsx';
import { Empty, Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { findDoc, retiredOf } from '#app/state/documents.ts';
import { now } from '#app/state/now.ts';
import type { LotOnShelf } from './choose-lot.ts';
import { itemType } from './lot-edit-screen.tsx';
import { endsAt, isPast } from './lot-left.ts';
import { endWords, lotWords, showAmount } from './lot-words.ts';
import { type ShelfLots, useLots } from './use-lots.ts';
import './lots.css';

interface RowProps {
  one: LotOnShelf;
  shelf: ShelfLots;
  /** Where the thing itself is not said around it. */
  thing?: boolean;
}

export function LotRow({ one: { doc, lot, left }, shelf, thing }: RowProps) {
  const draws = shelf.draws.get(doc) ?? [];
  const care = left <= 0 || isPast(lot, now.value);
  const name = findDoc(itemType(lot.of), lot.item)?.body.name;
  return (
    <Row
      to={`/lots/${doc}`}
      title={lot.name}
      about={
        <>
          {thing && `${lotWords[lot.of].thing} · ${name ?? ''}`}
          <span class={care ? 'lot-care' : 'lot-end'}>{endWords(lot, draws, now.value)}</span>
        </>
      }
      value={showAmount(lot.of, Math.max(0, left))}
    />
  );
}

export const firstToEnd = (lots: readonly LotOnShelf[], { draws }: ShelfLots): LotOnShelf[] => {
  const ends = (l: LotOnShelf) => endsAt(l.lot, draws.get(l.doc) ?? [], now.value);
  return [...lots].sort((a, b) => (ends(a) < ends(b) ? -1 : ends(a) > ends(b) ? 1 : a.doc < b.doc ? -1 : 1));
};

/** What runs out or goes off first? */
export function LotsScreen() {
  const shelf = useLots();
  const gone = retiredOf('lot');
  return (
    <Screen title="Lots" back={{ to: '/shelf', label: 'Shelf' }}>
      <p class="quiet">Rolls, cans and reels: what runs out or goes off first stands on top.</p>
      {shelf && shelf.lots.length === 0 && (
        <>
          <Empty>
            No lots yet. Open a cloth, a resin system or a tape on the shelf and add the roll, can or reel you
            have. Each build then takes from it by itself.
          </Empty>
          <Ask term="lot" asks="What is a lot?" line />
          <LinkButton to="/shelf/cloth">To the cloths</LinkButton>
        </>
      )}
      {shelf && (
        <Rows label="Lots">
          {firstToEnd(shelf.lots, shelf).map((one) => (
            <LotRow key={one.doc} one={one} shelf={shelf} thing />
          ))}
        </Rows>
      )}
      {gone.length > 0 && (
        <details class="more">
          <summary>Used up ({gone.length})</summary>
          <Rows label="Used up">
            {gone.map(({ doc, body }) => (
              <Row key={doc} to={`/lots/${doc}`} title={body.name} about={lotWords[body.of].thing} />
            ))}
          </Rows>
        </details>
      )}
    </Screen>
  );
}
