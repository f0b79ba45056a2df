import { Beside, LinkButton } from '#app/parts/action.tsx';
import { Rows } from '#app/parts/rows.tsx';
import type { LotKind } from '#shared/record/lot.ts';
import { lotWords } from './lot-words.ts';
import { firstToEnd, LotRow } from './lots-screen.tsx';
import { useLots } from './use-lots.ts';

const kindsOf: Partial<Record<string, readonly LotKind[]>> = {
  cloth: ['cloth'],
  resin: ['resin', 'hardener'],
  tape: ['tape'],
};

/** The rolls, cans or reels of one thing on the shelf. */
export function LotsOfItem({ type, item }: { type: string; item: string }) {
  const shelf = useLots();
  const kinds = kindsOf[type];
  if (!kinds || !shelf) return null;
  return (
    <>
      {kinds.map((of) => {
        const lots = shelf.lots.filter(({ lot }) => lot.of === of && lot.item === item);
        if (lots.length === 0) return null;
        return (
          <div key={of}>
            <h2>{kinds.length > 1 ? `Lots of ${of}` : 'Lots'}</h2>
            <Rows label={`Lots of ${of}`}>
              {firstToEnd(lots, shelf).map((one) => (
                <LotRow key={one.doc} one={one} shelf={shelf} />
              ))}
            </Rows>
          </div>
        );
      })}
      <Beside>
        {kinds.map((of) => (
          <LinkButton key={of} to={`/lots/new/${of}/${item}`}>
            Add a {lotWords[of].one}
            {kinds.length > 1 ? ` of ${of}` : ''}
          </LinkButton>
        ))}
      </Beside>
    </>
  );
}
