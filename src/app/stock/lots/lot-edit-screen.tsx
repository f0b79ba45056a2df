import { Action } from '#app/parts/action.tsx';
import { DateField } from '#app/parts/date-field.tsx';
import { QuantityField, TextField } from '#app/parts/field.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go, type Params } from '#app/router.ts';
import { type Doc, findDoc, saveDoc } from '#app/state/documents.ts';
import { now } from '#app/state/now.ts';
import { settings } from '#app/state/settings.ts';
import { NotOnShelf } from '#app/stock/shelf/not-on-shelf.tsx';
import { type LotKind, lotKinds } from '#shared/record/lot.ts';
import { type LotDraft, lotDraft, lotOf, nameProblem, openedProblem, receivedProblem } from './lot-draft.ts';
import { lotWords } from './lot-words.ts';

/** What is typed here stays while the builder looks something up elsewhere. */
const drafts = new Map<string, LotDraft>();

function draftFor(key: string, make: () => LotDraft): LotDraft {
  const kept = drafts.get(key) ?? make();
  drafts.set(key, kept);
  return kept;
}

export const itemType = (of: LotKind) => (of === 'hardener' ? 'resin' : of);

const receivedHint: Record<LotKind, { metric: string; inchPound: string }> = {
  cloth: { metric: 'Length times width: 5 m of a 1.27 m roll is 6.35 m²', inchPound: 'Length times width' },
  resin: { metric: 'Net, as printed: 1 kg', inchPound: 'Net, as printed: 2 lb' },
  hardener: { metric: 'Net, as printed: 300 g', inchPound: 'Net, as printed: 10 oz' },
  tape: { metric: 'As printed: 50 m', inchPound: 'As printed: 150 ft' },
};

function Fields({ draft }: { draft: LotDraft }) {
  const said = (problem: string | undefined) => (draft.pressed.value ? problem : undefined);
  const { of } = draft;
  return (
    <>
      <TextField
        label="On its label"
        text={draft.name}
        hint={`Yours or the maker’s: ${lotWords[of].example}`}
        problem={said(nameProblem(draft))}
      />
      <QuantityField
        label={`How much came`}
        input={draft.received}
        hint={receivedHint[of][settings.value.units]}
      />
      <DateField type="date" label="Came on" text={draft.receivedOn} problem={said(receivedProblem(draft))} />
      <DateField
        type="date"
        label="Opened on"
        text={draft.openedOn}
        hint="Empty while it is closed"
        problem={said(openedProblem(draft))}
      />
      <DateField
        type="date"
        label="Good until"
        text={draft.expiresOn}
        hint="The date on the label; may stay empty"
      />
      <QuantityField
        label="Keeps once opened, months"
        input={draft.keepsOpen}
        hint="By the data sheet; may stay empty"
      />
      <QuantityField
        label={`Price of the ${lotWords[of].one}`}
        input={draft.price}
        hint="In your own money; may stay empty"
      />
      <TextField label="Note" text={draft.note} long />
    </>
  );
}

function Editor({ of, item, found }: { of: LotKind; item: string; found: Doc<'lot'> | undefined }) {
  const key = found?.revision.id ?? `new ${of} ${item}`;
  const draft = draftFor(key, () => lotDraft(of, item, now.peek(), found?.body));
  const thing = findDoc(itemType(of), item)?.body.name;
  const save = async () => {
    const lot = lotOf(draft, found?.body);
    if (!lot) {
      // After the problems are drawn.
      requestAnimationFrame(() => document.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
      return;
    }
    const options = found ? { doc: found.doc, retired: found.retired } : {};
    const doc = await saveDoc('lot', lot, options);
    if (doc === undefined) return;
    drafts.delete(key);
    go(`/lots/${doc}`);
  };
  return (
    <Screen
      kicker={thing}
      title={found ? `Change ${found.body.name}` : `New ${lotWords[of].one} of ${of}`}
      back={
        found
          ? { to: `/lots/${found.doc}`, label: found.body.name }
          : { to: `/shelf/${itemType(of)}/${item}`, label: 'Shelf' }
      }
      actions={<Action onPress={save}>{found ? 'Save the change' : 'Put it on the shelf'}</Action>}
    >
      <Fields draft={draft} />
    </Screen>
  );
}

/** What came, when, and until when is it good? */
export function LotEditScreen({ params }: { params: Params }) {
  const found = findDoc('lot', params.doc);
  const of = found?.body.of ?? lotKinds.find((k) => k === params.of);
  const item = found?.body.item ?? params.item;
  if (!of || item === undefined || (params.doc !== undefined && !found)) return <NotOnShelf />;
  return <Editor key={found?.revision.id ?? 'new'} of={of} item={item} found={found} />;
}
