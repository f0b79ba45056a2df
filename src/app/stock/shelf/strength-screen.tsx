import { Action, Secondary } from '#app/parts/action.tsx';
import { Ask } from '#app/parts/ask.tsx';
import { QuantityField } from '#app/parts/field.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Caution, Warning } from '#app/parts/warning.tsx';
import { handbookLamina, laminaOf, strengthKeys } from '#app/planning/carry/cloth-material.ts';
import { go, type Params } from '#app/router.ts';
import { type Doc, findDoc, saveDoc } from '#app/state/documents.ts';
import { show } from '#app/state/show.ts';
import type { LaminaRecord } from '#shared/record/lamina.ts';
import { handbookSource } from '#shared/reference/strengths.ts';
import { keepDraft } from './item-drafts.ts';
import {
  clothWith,
  isAllEmpty,
  isGoodLamina,
  type LaminaDraft,
  laminaDraft,
  takeOver,
} from './lamina-draft.ts';
import { figureOf, type LaminaKey, laminaFields } from './lamina-fields.ts';
import { NotOnShelf } from './not-on-shelf.tsx';

/** What is typed here stays while the builder looks something up elsewhere. */
const drafts = new Map<string, LaminaDraft>();

function draftFor({ revision, body }: Doc<'cloth'>): LaminaDraft {
  const draft = drafts.get(revision.id) ?? laminaDraft(body);
  drafts.set(revision.id, draft);
  return draft;
}

interface FieldsProps {
  draft: LaminaDraft;
  keys: readonly LaminaKey[];
  typical: LaminaRecord | undefined;
}

function Fields({ draft, keys, typical }: FieldsProps) {
  return (
    <>
      {keys.map((key) => {
        const input = draft.inputs.get(key);
        const { label, about, options } = laminaFields[key];
        const usual = figureOf(typical, key);
        const hint = [
          about,
          usual !== undefined && `${key === 'crimp' ? 'Usual' : 'Handbook'} ${show(usual, options.quantity)}`,
        ];
        return (
          input && (
            <QuantityField key={key} label={label} input={input} hint={hint.filter(Boolean).join('. ')} />
          )
        );
      })}
    </>
  );
}

interface HandbookProps {
  draft: LaminaDraft;
  typical: LaminaRecord | undefined;
  own: boolean;
}

function Handbook({ draft, typical, own }: HandbookProps) {
  if (!typical) {
    if (own) return null;
    return (
      <Warning kind="amber" title="No handbook knows this fiber">
        Write down what its data sheet says, or nothing is reckoned with it.
      </Warning>
    );
  }
  return (
    <>
      {own ? (
        <p>Plans are reckoned with your own figures.</p>
      ) : (
        <Warning kind="amber" title="A handbook’s figures: typical, not for design">
          {handbookSource}. Found at {show(typical.fiberVolumeFraction, 'fraction', 0)} fiber; each plan takes
          them down to its own fiber volume.
        </Warning>
      )}
      <Secondary onPress={() => takeOver(draft, typical)}>Take the handbook’s figures</Secondary>
    </>
  );
}

function Strength({ found }: { found: Doc<'cloth'> }) {
  const { doc, body, revision } = found;
  const draft = draftFor(found);
  const typical = handbookLamina(body);
  const back = `/shelf/cloth/${doc}`;
  const nothing = isAllEmpty(draft) && !body.lamina;
  const save = async () => {
    if (!isGoodLamina(draft)) {
      // After the problems are drawn.
      requestAnimationFrame(() => document.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
      return;
    }
    if (!(await saveDoc('cloth', clothWith(draft, body), { doc }))) return;
    drafts.delete(revision.id);
    // What was typed in the cloth's own form, and not saved yet, must not go with its old revision.
    keepDraft(revision.id, findDoc('cloth', doc)?.revision.id);
    go(back);
  };
  return (
    <Screen
      kicker={body.name}
      title="Stiffness and strength"
      back={{ to: back, label: 'Cloth' }}
      actions={
        <Action onPress={save} not={nothing ? 'Nothing written yet' : undefined}>
          Save as a new revision
        </Action>
      }
    >
      <Handbook draft={draft} typical={typical} own={laminaOf(body)?.from === 'own'} />
      <div class="ask-head">
        <h2>Stiffness of one ply</h2>
        <Ask term="lamina" asks="What is one ply with its fibers one way?" />
      </div>
      <Fields
        draft={draft}
        keys={draft.keys.filter((k) => !strengthKeys.some((s) => s === k))}
        typical={typical}
      />
      <h2>Strength of one ply</h2>
      <p class="quiet">All five or none: without them only stiffness is reckoned.</p>
      <Fields draft={draft} keys={strengthKeys} typical={typical} />
      <Caution>
        What a sheet says is of plies made its way. Your own, tested, go before it. What carries people needs
        tests, local rules and licensed review.
      </Caution>
    </Screen>
  );
}

/** What do this cloth's fibers do in epoxy? */
export function StrengthScreen({ params }: { params: Params }) {
  const found = findDoc('cloth', params.doc);
  return found ? <Strength key={found.revision.id} found={found} /> : <NotOnShelf />;
}
