import { Action } from '#app/parts/action.tsx';
import { Empty, Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go, type Params } from '#app/router.ts';
import { type Doc, docsOf, retiredOf } from '#app/state/documents.ts';
import { itemWords } from './item-words.ts';
import { isShelfType, kindWords, type ShelfType } from './kinds.ts';
import { NotOnShelf } from './not-on-shelf.tsx';
import './shelf.css';

function ItemRow({ type, doc }: { type: ShelfType; doc: Doc<ShelfType> }) {
  const { about, value } = itemWords(type, doc.body);
  return (
    <Row
      to={`/shelf/${type}/${doc.doc}`}
      title={doc.body.name}
      about={
        doc.others.length > 0 ? (
          'Changed on two phones: open it to choose'
        ) : (
          <>
            {about}
            {doc.body.typical && <span class="typical">Typical: check your data sheet</span>}
          </>
        )
      }
      value={value}
    />
  );
}

/** Which of them are on the shelf? */
export function KindScreen({ params }: { params: Params }) {
  const { type } = params;
  if (!isShelfType(type)) return <NotOnShelf />;
  const docs: Doc<ShelfType>[] = docsOf(type);
  const retired: Doc<ShelfType>[] = retiredOf(type);
  const { many, fresh, about } = kindWords[type];
  return (
    <Screen
      title={many}
      back={{ to: '/shelf', label: 'Shelf' }}
      actions={<Action onPress={() => go(`/shelf/${type}/new`)}>{fresh}</Action>}
    >
      <p class="quiet">{about}</p>
      {docs.length === 0 && <Empty>None on the shelf.</Empty>}
      <Rows label={many}>
        {docs.map((doc) => (
          <ItemRow key={doc.doc} type={type} doc={doc} />
        ))}
      </Rows>
      {retired.length > 0 && (
        <details class="more">
          <summary>Taken off the shelf ({retired.length})</summary>
          <Rows label="Taken off the shelf">
            {retired.map((doc) => (
              <ItemRow key={doc.doc} type={type} doc={doc} />
            ))}
          </Rows>
        </details>
      )}
    </Screen>
  );
}
