import { useSignal } from '@preact/signals';
import { countWords, spreadWords } from '#app/made/factors/factor-words.ts';
import { Strip } from '#app/made/factors/strip.tsx';
import type { Factor } from '#app/made/learned/factors.ts';
import { madeOfAll } from '#app/made/learned/made-facts.ts';
import { shopStiffnessOf } from '#app/made/learned/shop-values.ts';
import { Action } from '#app/parts/action.tsx';
import { Choice } from '#app/parts/field.tsx';
import { BigFigure } from '#app/parts/figure.tsx';
import { Empty, Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { type LoadedPlan, loadedPlan } from '#app/planning/loads/use-plan.ts';
import { NoPlan } from '#app/planning/wall/no-plan.tsx';
import { go, type Params } from '#app/router.ts';
import { useAllSummaries } from '#app/state/all-summaries.ts';
import { findDoc, saveDoc } from '#app/state/documents.ts';
import { show, showSplit } from '#app/state/show.ts';

const frameOf = ({ found, home }: LoadedPlan) => ({
  kicker: found.body.name,
  title: 'As stiff as what?',
  back: { to: home, label: 'Loads' },
});

type Whose = 'shop' | 'book';

/** Ten times softer or stiffer than reckoned no tube comes out: a plan must not keep a slip. */
const likely = (factor: number) => factor >= 0.1 && factor <= 10;

function Whose({ of, factor }: { of: LoadedPlan; factor: Factor }) {
  const { found, home } = of;
  const { median, count } = factor.spread;
  const whose = useSignal<Whose>(found.body.stiffness ? 'shop' : 'book');
  const save = async () => {
    const { stiffness: _, ...plan } = found.body;
    const body = whose.value === 'shop' ? { ...plan, stiffness: { factor: median, builds: count } } : plan;
    if ((await saveDoc('plan', body, { doc: found.doc })) !== undefined) go(home);
  };
  return (
    <Screen
      {...frameOf(of)}
      actions={
        <Action
          onPress={save}
          not={whose.value === 'shop' && !likely(median) ? 'Look at the tests: a slip is in them' : undefined}
        >
          {whose.value === 'shop'
            ? `Reckon with the shop’s ${show(median, 'fraction', 0)}`
            : 'Reckon with the cloths’ figures'}
        </Action>
      }
    >
      <BigFigure {...showSplit(median, 'fraction', 0)} label="As stiff as reckoned, this shop’s tubes" />
      <p>
        {countWords(factor)} of this cloth, bent under a weight; {spreadWords(factor)}.
      </p>
      <Strip factor={factor} />
      <Choice
        label="This plan is reckoned with"
        value={whose.value}
        options={[
          { value: 'shop', label: `Shop’s ${show(median, 'fraction', 0)}` },
          { value: 'book', label: 'Its cloths’ figures' },
        ]}
        onChange={(value) => {
          whose.value = value;
        }}
      />
      <p class="quiet">
        The shop’s takes stiffness along and across the fibers times that, in deflection and buckling. What a
        ply bears stays.
      </p>
      <Rows label="Where it comes from">
        <Row to="/factors/stiffness" title="The tubes that were tested" />
      </Rows>
    </Screen>
  );
}

/** Is the tube reckoned as stiff as its cloths' figures say, or as this shop's tubes came out? */
export function StiffnessScreen({ params }: { params: Params }) {
  const of = loadedPlan(params.doc);
  const all = useAllSummaries();
  if (!of) return <NoPlan />;
  if (!all) return null;
  const cloth = findDoc('cloth', of.found.body.cloth)?.body.name;
  const factor = cloth === undefined ? undefined : shopStiffnessOf(madeOfAll(all), cloth);
  if (factor) return <Whose of={of} factor={factor} />;
  return (
    <Screen {...frameOf(of)} actions={<Action onPress={() => go(of.home)}>Back to the loads</Action>}>
      <Empty>
        Its cloths’ figures, until a tube of this cloth was tested: weigh a finished one, then ‘Test it’ hangs
        a weight on it and says how stiff it came out.
      </Empty>
    </Screen>
  );
}
