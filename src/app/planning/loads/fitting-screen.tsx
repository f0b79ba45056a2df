import { Action, Secondary } from '#app/parts/action.tsx';
import { Choice, QuantityField, TextField } from '#app/parts/field.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { NoPlan } from '#app/planning/wall/no-plan.tsx';
import { go, type Params } from '#app/router.ts';
import { theStore } from '#app/state/shop.ts';
import type { Fitting } from '#shared/record/load-plan.ts';
import {
  type FittingDraft,
  fittingDraft,
  fittingIsGood,
  fittingOfDraft,
  nameProblem,
} from './fitting-draft.ts';
import { BondPicture, ClampPicture } from './fitting-pictures.tsx';
import { dropDraft, keptDraft } from './kept-draft.ts';
import { withFitting, withoutFitting } from './loads-edits.ts';
import { NotThere } from './not-there.tsx';
import { saveLoads } from './save.ts';
import { focusWrong, type LoadedPlan, loadedPlan } from './use-plan.ts';

function ClampFields({ draft }: { draft: FittingDraft }) {
  return (
    <>
      <ClampPicture />
      <div class="field-pair">
        <QuantityField label="At" input={draft.at} hint="its middle, from end 0 of the tube" />
        <QuantityField label="Width" input={draft.width} hint="along the tube" />
      </div>
      <QuantityField label="Squeezes with" input={draft.squeeze} hint="on each side" />
    </>
  );
}

function BondFields({ draft }: { draft: FittingDraft }) {
  return (
    <>
      <BondPicture />
      <div class="field-pair">
        <QuantityField label="At" input={draft.at} hint="its middle, from end 0" />
        <QuantityField label="Length of the bond" input={draft.length} />
      </div>
      <div class="field-pair">
        <QuantityField label="Pulls along it with" input={draft.force} hint="0 where it only twists" />
        <QuantityField label="Twists it with" input={draft.torque} hint="may stay empty" />
      </div>
      <h2>The glue</h2>
      <QuantityField label="Thickness of the glue" input={draft.glue} />
      <div class="field-pair">
        <QuantityField label="Its shear modulus" input={draft.shearModulus} hint="from its data sheet" />
        <QuantityField label="Its shear strength" input={draft.shearStrength} hint="from its data sheet" />
      </div>
      <h2>What is bonded on</h2>
      <div class="field-pair">
        <QuantityField label="Its modulus" input={draft.modulus} hint="aluminum 70 GPa (10 Msi)" />
        <QuantityField label="Its wall" input={draft.wall} />
      </div>
    </>
  );
}

function Editor({ of, fitting }: { of: LoadedPlan; fitting: Fitting | undefined }) {
  const { found, length, home } = of;
  const key = `${found.doc} fitting ${fitting?.id ?? 'new'}`;
  const draft = keptDraft(key, { fitting, length }, () => fittingDraft(fitting, length));
  const save = async () => {
    const good = fittingIsGood(draft);
    const made = fittingOfDraft(draft, fitting?.id ?? theStore().newId(), length);
    if (!good || !made) {
      focusWrong();
      return;
    }
    if (!(await saveLoads(found.doc, (now) => withFitting(now, made)))) return;
    dropDraft(key);
    go(home);
  };
  const remove = async () => {
    if (fitting && (await saveLoads(found.doc, (now) => withoutFitting(now, fitting.id)))) go(home);
  };
  return (
    <Screen
      kicker={found.body.name}
      title={fitting ? `Change ${fitting.name}` : 'New fitting'}
      back={{ to: home, label: 'Loads' }}
      actions={<Action onPress={save}>{fitting ? 'Save the change' : 'Put it on the tube'}</Action>}
    >
      <Choice
        label="What it does to the wall"
        value={draft.kind.value}
        options={[
          { value: 'clamp', label: 'Squeezes it' },
          { value: 'bond', label: 'Is bonded on' },
        ]}
        onChange={(kind) => (draft.kind.value = kind)}
      />
      <TextField
        label="Name"
        text={draft.name}
        problem={draft.pressed.value ? nameProblem(draft) : undefined}
        hint="Gooseneck band, end ferrule"
      />
      {draft.kind.value === 'clamp' ? <ClampFields draft={draft} /> : <BondFields draft={draft} />}
      {fitting && <Secondary onPress={remove}>Take this fitting off</Secondary>}
    </Screen>
  );
}

/** What squeezes the wall, or is bonded to it? */
export function FittingScreen({ params }: { params: Params }) {
  const of = loadedPlan(params.doc);
  if (!of) return <NoPlan />;
  const fitting = of.loads.fittings?.find((f) => f.id === params.fitting);
  if (!fitting && params.fitting !== 'new') return <NotThere of={of} what="fitting" />;
  return <Editor key={params.fitting} of={of} fitting={fitting} />;
}
