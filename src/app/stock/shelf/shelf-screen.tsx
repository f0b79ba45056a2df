import { Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { docsOf } from '#app/state/documents.ts';
import { kindWords, shelfTypes } from './kinds.ts';

/** What does this shop build with? */
export function ShelfScreen() {
  return (
    <Screen title="Shelf">
      <Rows label="On the shelf">
        {shelfTypes.map((type) => {
          const docs = docsOf(type);
          const apart = docs.some((d) => d.others.length > 0);
          return (
            <Row
              key={type}
              to={`/shelf/${type}`}
              title={kindWords[type].many}
              about={apart && 'Changed on two phones: open it to choose'}
              value={String(docs.length)}
            />
          );
        })}
      </Rows>
      <Rows label="In stock">
        <Row
          to="/lots"
          title="Lots"
          about="Rolls, cans and reels: what is left, what goes off"
          value={String(docsOf('lot').length)}
        />
      </Rows>
      <Rows label="The app">
        <Row to="/data" title="Data and backup" about="Save, restore, tables, demo shop" />
        <Row to="/words" title="Words" about="What the terms mean, with pictures" />
        <Row to="/settings" title="This phone" about="Units, look, scale, sound" />
      </Rows>
    </Screen>
  );
}
