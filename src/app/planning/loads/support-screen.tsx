import { Action, Secondary } from '#app/parts/action.tsx';
import { Choice, QuantityField } from '#app/parts/field.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { NoPlan } from '#app/planning/wall/no-plan.tsx';
import { go, type Params } from '#app/router.ts';
import { theStore } from '#app/state/shop.ts';
import type { Support } from '#shared/record/load-plan.ts';
import { chosenCase } from './chosen-case.ts';
import { dropDraft, keptDraft } from './kept-draft.ts';
import { withoutSupport, withSupport } from './loads-edits.ts';
import { NotThere } from './not-there.tsx';
import { saveLoads } from './save.ts';
import { Sketch } from './sketch.tsx';
import { type SupportDraft, supportDraft, supportIsGood, supportOfDraft } from './support-draft.ts';
import { focusWrong, type LoadedPlan, loadedPlan } from './use-plan.ts';

const about: Record<Support['holds'], string> = {
  builtIn: 'Cannot move, turn or slide there: laminated in, or clamped hard.',
  rests: 'Cannot go aside there, but is free to lean: a partner, a strop, a saddle.',
  sleeve: 'Cannot go aside at both ends of the sleeve, so that it cannot lean either.',
};

function HoldsToo({ draft }: { draft: SupportDraft }) {
  return (
    <fieldset class="choice">
      <legend>Also holds it from</legend>
      <div class="choice-row">
        {(
          [
            [draft.holdsTwist, 'Twisting'],
            [draft.holdsAxial, 'Sliding along'],
          ] as const
        ).map(([on, label]) => (
          <button key={label} type="button" aria-pressed={on.value} onClick={() => (on.value = !on.value)}>
            {label}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

function Fields({ draft }: { draft: SupportDraft }) {
  const holds = draft.holds.value;
  return (
    <>
      <Choice
        label="How it is held there"
        value={holds}
        options={[
          { value: 'builtIn', label: 'Built in' },
          { value: 'rests', label: 'Rests' },
          { value: 'sleeve', label: 'Sleeve' },
        ]}
        onChange={(to) => (draft.holds.value = to)}
      />
      <p>{about[holds]}</p>
      <div class="field-pair">
        <QuantityField
          label={holds === 'sleeve' ? 'Begins at' : 'At'}
          input={draft.at}
          hint="from end 0 of the tube"
        />
        {holds === 'sleeve' && <QuantityField label="Length of the sleeve" input={draft.length} />}
      </div>
      {holds !== 'builtIn' && <HoldsToo draft={draft} />}
    </>
  );
}

function Editor({ of, support }: { of: LoadedPlan; support: Support | undefined }) {
  const { found, loads, length, home } = of;
  const key = `${found.doc} support ${support?.id ?? 'new'}`;
  const id = support?.id ?? 'new';
  const others = loads.supports.filter((s) => s.id !== id);
  const draft = keptDraft(key, { support, length }, () => supportDraft(support, length, others));
  const drawn = supportOfDraft(draft, id, length);
  const save = async () => {
    const made = supportOfDraft(draft, support?.id ?? theStore().newId(), length);
    if (!supportIsGood(draft) || !made) {
      focusWrong();
      return;
    }
    if (!(await saveLoads(found.doc, (now) => withSupport(now, made)))) return;
    dropDraft(key);
    go(home);
  };
  const remove = async () => {
    if (support && (await saveLoads(found.doc, (now) => withoutSupport(now, support.id)))) go(home);
  };
  return (
    <Screen
      kicker={found.body.name}
      title={support ? 'Change the support' : 'New support'}
      back={{ to: home, label: 'Loads' }}
      actions={<Action onPress={save}>{support ? 'Save the change' : 'Hold it there'}</Action>}
    >
      <Sketch
        length={length}
        supports={drawn ? [...others, drawn] : others}
        loads={chosenCase(found.doc, loads)?.loads ?? []}
        chosen={id}
      />
      <Fields draft={draft} />
      {support && <Secondary onPress={remove}>Take this support out</Secondary>}
    </Screen>
  );
}

/** Where is the tube held, and how? */
export function SupportScreen({ params }: { params: Params }) {
  const of = loadedPlan(params.doc);
  if (!of) return <NoPlan />;
  const support = of.loads.supports.find((s) => s.id === params.support);
  if (!support && params.support !== 'new') return <NotThere of={of} what="support" />;
  return <Editor key={params.support} of={of} support={support} />;
}
