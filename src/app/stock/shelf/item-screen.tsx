import { useSignal } from '@preact/signals';
import { Fragment } from 'preact';
import { Action, Secondary } from '#app/parts/action.tsx';
import { Conflict } from '#app/parts/conflict.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { knownWords, strengthPath } from '#app/planning/carry/carry-words.ts';
import { go, type Params } from '#app/router.ts';
import { type Doc, findDoc, saveDoc } from '#app/state/documents.ts';
import { LotsOfItem } from '#app/stock/lots/lots-of-item.tsx';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { differences } from './differences.ts';
import { FieldRow } from './field-row.tsx';
import type { Field } from './fields.ts';
import { askedFields, bodyOf, type ItemDraft, isGood, itemDraft } from './item-draft.ts';
import { draftFor, dropDraft } from './item-drafts.ts';
import { type ItemType, isItemType, kindWords } from './kinds.ts';
import { NotOnShelf } from './not-on-shelf.tsx';
import { RatioLine } from './ratio-line.tsx';
import { resinDoubts } from './resin-doubts.ts';
import { ResinFit } from './resin-fit.tsx';
import './shelf.css';

function More({ draft, fields }: { draft: ItemDraft; fields: readonly Field[] }) {
  const open = draft.moreOpen;
  if (fields.length === 0) return null;
  return (
    <>
      <button
        type="button"
        class="more-of-sheet"
        aria-expanded={open.value}
        onClick={() => {
          open.value = !open.value;
        }}
      >
        More from the data sheet
      </button>
      {open.value && fields.map((field) => <FieldRow key={field.path} draft={draft} field={field} />)}
    </>
  );
}

/** The grams stand under the last of the fields that make the ratio. */
function Fields({ draft }: { draft: ItemDraft }) {
  const all = askedFields(draft);
  const asked = all.filter((f) => !f.more);
  const lastOfRatio = asked.filter((f) => f.path.startsWith('ratio.')).at(-1)?.path;
  return (
    <>
      {asked.map((field) => (
        <Fragment key={field.path}>
          {field.path === 'note' && <More draft={draft} fields={all.filter((f) => f.more)} />}
          <FieldRow draft={draft} field={field} />
          {field.path === lastOfRatio && <RatioLine draft={draft} />}
        </Fragment>
      ))}
    </>
  );
}

function Typical({ found }: { found: Doc<ItemType> }) {
  if (!found.body.typical) return null;
  return (
    <Warning kind="amber" title="Typical: check your data sheet">
      {found.body.note} This mark goes once you save your own values.
    </Warning>
  );
}

/** What its fibers do in epoxy has a screen of its own. */
function InTheWall({ doc }: { doc: string }) {
  const cloth = findDoc('cloth', doc)?.body;
  if (!cloth) return null;
  return (
    <Rows label="In the wall">
      <Row
        to={strengthPath(doc)}
        title={knownWords(cloth)}
        about="What its fibers do in epoxy, one ply of them"
      />
    </Rows>
  );
}

function ShelfLife({ type, found }: { type: ItemType; found: Doc<ItemType> }) {
  const move = async (retired: boolean) => {
    if (await saveDoc(type, found.body, { doc: found.doc, retired })) go(`/shelf/${type}`);
  };
  return found.retired ? (
    <Secondary onPress={() => move(false)}>Put it back on the shelf</Secondary>
  ) : (
    <Secondary onPress={() => move(true)}>Take it off the shelf</Secondary>
  );
}

function Item({ type, found }: { type: ItemType; found: Doc<ItemType> | undefined }) {
  const key = found?.revision.id ?? `new ${type}`;
  const draft = draftFor(key, () => itemDraft(type, found?.body));
  const asked = useSignal('');
  const resin = type === 'resin' ? (bodyOf(draft, found?.body) as ResinSystem | undefined) : undefined;
  const doubts = resin ? resinDoubts(resin) : [];
  const said = doubts.join(' ');
  const save = async () => {
    const body = isGood(draft) ? bodyOf(draft, found?.body) : undefined;
    if (!body) {
      // After the problems are drawn.
      requestAnimationFrame(() => document.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
      return;
    }
    if (said !== asked.value) {
      asked.value = said;
      if (said !== '') return;
    }
    if (!(await saveDoc(type, body, found ? { doc: found.doc } : {}))) return;
    dropDraft(key);
    go(`/shelf/${type}`);
  };
  return (
    <Screen
      title={found?.body.name ?? kindWords[type].fresh}
      back={{ to: `/shelf/${type}`, label: kindWords[type].many }}
      actions={
        <>
          {asked.value !== '' && asked.value === said && (
            <Warning kind="amber" title="Is this right?" announce>
              {said} Pressing again saves it as it is.
            </Warning>
          )}
          <Action onPress={save}>{found ? 'Save as a new revision' : 'Put it on the shelf'}</Action>
        </>
      }
    >
      {found && <Conflict type={type} doc={found} table={(bodies) => differences(type, bodies)} />}
      {found && <Typical found={found} />}
      <Fields draft={draft} />
      {found && type === 'cloth' && <InTheWall doc={found.doc} />}
      {found && <LotsOfItem type={type} item={found.doc} />}
      {resin && <ResinFit resin={resin} />}
      {found && <ShelfLife type={type} found={found} />}
      <p class="quiet small">
        Builds keep what they were started with. Plans take what is here when they are used.
      </p>
    </Screen>
  );
}

/** What does the data sheet say of it? */
export function ItemScreen({ params }: { params: Params }) {
  const { type, doc } = params;
  if (!isItemType(type)) return <NotOnShelf />;
  const found: Doc<ItemType> | undefined = findDoc(type, doc);
  if (doc !== undefined && !found) return <NotOnShelf />;
  return <Item key={found?.revision.id ?? 'new'} type={type} found={found} />;
}
