import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import { countWords, shownAs } from '#app/made/factors/factor-words.ts';
import type { Factor } from '#app/made/learned/factors.ts';
import { madeOfAll } from '#app/made/learned/made-facts.ts';
import { shopValues } from '#app/made/learned/shop-values.ts';
import { showPly } from '#app/made/results/show-ply.ts';
import { QuantityField } from '#app/parts/field.tsx';
import { plyThickness } from '#app/planning/wall/wall-model.ts';
import { useAllSummaries } from '#app/state/all-summaries.ts';
import { findDoc } from '#app/state/documents.ts';
import { show } from '#app/state/show.ts';
import { type Learnable, learnable } from '#shared/record/plan.ts';
import { learnedInputs, type MakingDraft } from './draft.ts';
import { firstGoal } from './first-goal.ts';
import { standing, type Taken } from './origins.ts';
import './learned-fields.css';

const names: Record<Learnable, string> = {
  fiberVolume: 'Fiber volume',
  lossPerCup: 'Lost in each cup',
  squeezeOut: 'Squeezed out',
  workingRate: 'Working rate',
  plyThickness: 'A cured ply',
};

interface Book {
  /** Put into the field; empty where the book leaves it open. */
  value: number | undefined;
  says: string;
  /** Where it comes from. */
  why: string;
}

const practice = 'common practice';

function bookOf(draft: MakingDraft, key: Learnable): Book {
  switch (key) {
    case 'fiberVolume':
      return {
        value: firstGoal.fiberVolumeFraction,
        says: show(firstGoal.fiberVolumeFraction, 'fraction'),
        why: practice,
      };
    case 'lossPerCup':
      return { value: firstGoal.lossPerCup, says: show(firstGoal.lossPerCup, 'mass'), why: practice };
    case 'squeezeOut':
      return { value: firstGoal.squeezeOut, says: show(firstGoal.squeezeOut, 'fraction'), why: practice };
    case 'workingRate':
      return { value: undefined, says: 'none', why: 'cups as large as they may be' };
    case 'plyThickness': {
      const cloth = findDoc('cloth', draft.cloth.value)?.body;
      const volume = draft.goal.fiberVolume.si.value;
      const ply = cloth && volume !== undefined ? plyThickness(cloth, volume) : undefined;
      return {
        value: undefined,
        says: ply === undefined ? 'none' : showPly(ply),
        why: 'from cloth and fiber volume',
      };
    }
  }
}

interface WhoseProps {
  pressed: boolean;
  onPress: () => void;
  title: string;
  children: ComponentChildren;
}

function Whose({ pressed, onPress, title, children }: WhoseProps) {
  return (
    <button type="button" class="secondary learned-whose" aria-pressed={pressed} onClick={onPress}>
      <span>
        {title}
        <small>{children}</small>
      </span>
    </button>
  );
}

/** Shop's or book's, side by side: a press puts it into its field, and typing over it makes it the builder's own. */
function ShopOrBook({ draft, of, shop }: { draft: MakingDraft; of: Learnable; shop: Factor }) {
  const inputs = learnedInputs(draft);
  const taken = standing(draft.from.value, inputs)[of];
  const take = (one: Taken) => {
    inputs[of].set(one.value);
    draft.from.value = { ...draft.from.value, [of]: one };
  };
  const book = bookOf(draft, of);
  const { median, count } = shop.spread;
  return (
    <fieldset class="choice">
      <legend>{names[of]}</legend>
      <div class="beside">
        <Whose
          title={`Shop's: ${shownAs(of, median)}`}
          pressed={taken?.of === 'shop'}
          onPress={() => take({ of: 'shop', builds: count, value: median })}
        >
          {countWords(shop)} {shop.of}
        </Whose>
        <Whose
          title={`Book's: ${book.says}`}
          pressed={taken?.of === 'book'}
          onPress={() => take({ of: 'book', value: book.value })}
        >
          {book.why}
        </Whose>
      </div>
    </fieldset>
  );
}

const summaryWords = (count: number) =>
  count === 0 ? 'The shop’s figures or the book’s' : `The shop’s figures or the book’s: ${count} the shop’s`;

interface Props {
  draft: MakingDraft;
  /** A plan's ply can be the shop's as well. */
  ply?: boolean;
}

/** Read when it is opened: thousands of builds take a moment. */
function Learned({ draft, ply }: Props) {
  const all = useAllSummaries();
  const cloth = findDoc('cloth', draft.cloth.value)?.body.name;
  const release = findDoc('release', draft.release.value)?.body.name;
  const tape = findDoc('tape', draft.tape.value)?.body.name;
  const values = useMemo(
    () => (all && cloth ? shopValues(madeOfAll(all), { cloth, release, tape }) : {}),
    [all, cloth, release, tape],
  );
  return (
    <div class="learned">
      {all && Object.keys(values).length === 0 && (
        <p class="quiet">
          No builds of your own say anything yet: weigh what stays in the cups and weigh the tube.
        </p>
      )}
      {learnable.map((key) => {
        const shop = values[key];
        return shop && (ply || key !== 'plyThickness') ? (
          <ShopOrBook key={key} draft={draft} of={key} shop={shop} />
        ) : null;
      })}
      <QuantityField
        label="Working rate"
        input={draft.workingRate}
        hint="mixed resin laid down; a cup is no bigger than it can be used up"
      />
      {ply && (
        <QuantityField
          label="A cured ply"
          input={draft.plyThickness}
          hint="empty: as it follows from cloth and fiber volume"
        />
      )}
    </div>
  );
}

/** Whose figures are to be counted with: those of this shop's own builds, or common ones. */
export function LearnedFields({ draft, ply }: Props) {
  const open = useSignal(false);
  const taken = Object.values(standing(draft.from.value, learnedInputs(draft)));
  const shops = taken.filter((t) => t.of === 'shop').length;
  return (
    <details class="more" onToggle={(event) => (open.value = event.currentTarget.open)}>
      <summary>{summaryWords(shops)}</summary>
      {open.value && <Learned draft={draft} {...(ply && { ply })} />}
    </details>
  );
}
