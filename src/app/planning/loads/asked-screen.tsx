import { Action } from '#app/parts/action.tsx';
import { Ask } from '#app/parts/ask.tsx';
import { QuantityField } from '#app/parts/field.tsx';
import { allGood, type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import { Screen } from '#app/parts/screen.tsx';
import { Caution } from '#app/parts/warning.tsx';
import { NoPlan } from '#app/planning/wall/no-plan.tsx';
import { go, type Params } from '#app/router.ts';
import type { LoadPlan } from '#shared/record/load-plan.ts';
import { compressionKept, dropTaper } from '#shared/reference/strengths.ts';
import { dropDraft, keptDraft } from './kept-draft.ts';
import { place } from './load-words.ts';
import { boundedInput } from './place-input.ts';
import { saveLoads } from './save.ts';
import { focusWrong, type LoadedPlan, loadedPlan } from './use-plan.ts';

type Asked = Pick<
  LoadPlan,
  'safetyFactor' | 'mostDeflection' | 'freeLength' | 'compressionKept' | 'dropTaper'
>;
type AskedDraft = Record<keyof Asked, QuantityInput>;

const askedOf = ({
  safetyFactor,
  mostDeflection,
  freeLength,
  compressionKept,
  dropTaper,
}: LoadPlan): Asked => ({
  safetyFactor,
  mostDeflection,
  freeLength,
  compressionKept,
  dropTaper,
});

function askedDraft(asked: Asked, length: number): AskedDraft {
  const optional = { optional: true, positive: true };
  return {
    safetyFactor: boundedInput(
      asked.safetyFactor,
      { quantity: 'number', min: 1, max: 100 },
      () => 'A safety factor is 1 or more, up to 100: below 1 counts on a tube that has failed.',
    ),
    mostDeflection: quantityInput(asked.mostDeflection, { quantity: 'length', max: 15, ...optional }),
    freeLength: boundedInput(
      asked.freeLength,
      { quantity: 'length', max: length, ...optional },
      () => `Between what keeps the wall round there is no more than the tube, ${place(length)}.`,
    ),
    compressionKept: boundedInput(
      asked.compressionKept,
      { quantity: 'fraction', min: 0.1, max: 1, optional: true },
      () => 'A wall keeps between 10 % and 100 % of it: write one like 60 %.',
    ),
    dropTaper: quantityInput(asked.dropTaper, { quantity: 'number', max: 1000, ...optional }),
  };
}

function Fields({ draft, length }: { draft: AskedDraft; length: number }) {
  return (
    <>
      <QuantityField
        label="Safety factor"
        ask={<Ask term="safety-factor" asks="What is the safety factor?" />}
        input={draft.safetyFactor}
        hint="yours to say: nothing is checked without it"
      />
      <QuantityField
        label="Most it may go aside"
        input={draft.mostDeflection}
        hint="under the loads with their load factor; may stay empty"
      />
      <QuantityField
        label="Longest stretch nothing keeps round"
        ask={<Ask term="wall-buckling" asks="What is wall buckling?" />}
        input={draft.freeLength}
        hint={`from rib, plug or fitting to the next; empty: all of it, ${place(length)}`}
      />
      <QuantityField
        label="Strength left when pressed"
        input={draft.compressionKept}
        hint={`share of the data sheet’s compression strength that hand layup keeps; empty: ${Math.round(100 * compressionKept)} %`}
      />
      <QuantityField
        label="A ply ends over"
        input={draft.dropTaper}
        hint={`times its thickness along the tube; empty: ${dropTaper}`}
      />
    </>
  );
}

function Editor({ of }: { of: LoadedPlan }) {
  const { found, loads, length, home } = of;
  const key = `${found.doc} asked`;
  const draft = keptDraft(key, { ...askedOf(loads), length }, () => askedDraft(askedOf(loads), length));
  const save = async () => {
    if (!allGood(Object.values(draft))) {
      focusWrong();
      return;
    }
    const saved = await saveLoads(found.doc, (now) => {
      const next: LoadPlan = { ...now };
      for (const name of Object.keys(draft) as (keyof Asked)[]) {
        const si = draft[name].si.value;
        if (si === undefined) delete next[name];
        else next[name] = si;
      }
      return next;
    });
    if (!saved) return;
    dropDraft(key);
    go(home);
  };
  return (
    <Screen
      kicker={found.body.name}
      title="What you ask of it"
      back={{ to: home, label: 'Loads' }}
      actions={<Action onPress={save}>It must do that</Action>}
    >
      <Fields draft={draft} length={length} />
      <Caution>
        No factor is right for all tubes: what it carries, how often, and what happens when it breaks decide.
        What carries people needs tests, local rules and licensed review.
      </Caution>
    </Screen>
  );
}

/** How much more than its loads must it bear, and how far may it bend? */
export function AskedScreen({ params }: { params: Params }) {
  const of = loadedPlan(params.doc);
  return of ? <Editor of={of} /> : <NoPlan />;
}
