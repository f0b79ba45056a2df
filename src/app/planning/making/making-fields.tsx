import type { Signal } from '@preact/signals';
import { Ask } from '#app/parts/ask.tsx';
import { Choice, FieldFrame, QuantityField, SelectField } from '#app/parts/field.tsx';
import { docsOf } from '#app/state/documents.ts';
import { resinWords } from '#app/state/resin-words.ts';
import { show } from '#app/state/show.ts';
import type { DocType } from '#shared/record/revision.ts';
import { clothMassOf, type MakingDraft } from './draft.ts';
import type { GoalInput } from './goal.ts';

interface PickProps {
  type: Exclude<DocType, 'plan' | 'mandrel'>;
  label: string;
  chosen: Signal<string>;
  /** Said for 'none of them', where that is an answer. */
  none?: string;
}

/** One thing off the shelf. */
export function Pick({ type, label, chosen, none }: PickProps) {
  const options = docsOf(type).map((d) => ({
    value: d.doc,
    label: 'hardener' in d.body ? resinWords(d.body) : d.body.name,
  }));
  const all = none ? [...options, { value: '', label: none }] : options;
  return (
    <SelectField
      label={label}
      value={chosen.value}
      options={all}
      onChange={(doc) => {
        chosen.value = doc;
      }}
    />
  );
}

const amounts = [
  { value: 'mass', label: 'Weighed' },
  { value: 'area', label: 'By area' },
] as const;

interface ClothProps {
  draft: MakingDraft;
  /** Where a wall can be drawn: true while the amount is to follow from it. */
  fromWall?: Signal<boolean>;
  /** The amount stands there from a plan: nobody has had it on a scale yet. */
  planned?: boolean;
}

export function ClothFields({ draft, fromWall, planned }: ClothProps) {
  const mass = clothMassOf(draft);
  const drawn = fromWall?.value === true;
  return (
    <>
      <Pick type="cloth" label="Cloth" chosen={draft.cloth} />
      <Choice
        label="How much cloth"
        value={drawn ? 'wall' : draft.amountBy.value}
        options={fromWall ? [{ value: 'wall', label: 'From its wall' }, ...amounts] : amounts}
        onChange={(by) => {
          if (fromWall) fromWall.value = by === 'wall';
          if (by !== 'wall') draft.amountBy.value = by;
        }}
      />
      {drawn ? (
        <p class="quiet">You draw the wall next, and the cloth follows from it.</p>
      ) : draft.amountBy.value === 'mass' ? (
        <QuantityField
          label="Cloth on the scale"
          input={draft.clothMass}
          {...(planned && { hint: 'The plan’s figure. Put in what your scale says.' })}
        />
      ) : (
        <QuantityField
          label="Area of cloth"
          input={draft.clothArea}
          hint={mass === undefined ? 'Its weight follows from the cloth.' : `weighs ${show(mass, 'mass')}`}
        />
      )}
    </>
  );
}

function RatioField({ goal }: { goal: GoalInput }) {
  return (
    <FieldFrame
      label="Resin to fabric"
      ask={<Ask term="resin-to-fabric" asks="What is resin to fabric?" />}
      hint="by weight"
      problem={goal.ratioProblem.value}
    >
      {({ id, describedBy }) => (
        <input
          id={id}
          type="text"
          autocomplete="off"
          aria-describedby={describedBy}
          aria-invalid={goal.ratioProblem.value !== undefined}
          value={goal.ratio.value}
          onInput={(event) => goal.typeRatio(event.currentTarget.value)}
        />
      )}
    </FieldFrame>
  );
}

export function ResinFields({ draft }: { draft: MakingDraft }) {
  return (
    <>
      <Pick type="resin" label="Resin and hardener" chosen={draft.resin} />
      <div class="field-pair">
        <QuantityField
          label="Fiber volume"
          ask={<Ask term="fiber-volume" asks="What is fiber volume?" />}
          input={draft.goal.fiberVolume}
          hint="of the cured wall"
        />
        <RatioField goal={draft.goal} />
      </div>
      <div class="field-pair">
        <QuantityField label="Lost in each cup" input={draft.lossPerCup} hint="cup, stick, film, gloves" />
        <QuantityField label="Squeezed out" input={draft.squeezeOut} hint="by the tape" />
      </div>
    </>
  );
}
