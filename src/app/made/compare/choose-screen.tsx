import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { useBuildsSoon } from '#app/made/record/first-builds.ts';
import { resultWords } from '#app/made/record/result-words.ts';
import { Action, Beside, Secondary } from '#app/parts/action.tsx';
import { SelectField } from '#app/parts/field.tsx';
import { Empty } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go, goInstead, type Params } from '#app/router.ts';
import { allSummaries, refreshSummaries, useAllSummaries } from '#app/state/all-summaries.ts';
import { docsOf, findDoc } from '#app/state/documents.ts';
import { now, zoneAt } from '#app/state/now.ts';
import type { BuildSummary } from '#shared/record/summary.ts';
import { formatDay } from '#shared/units/time.ts';
import { choose, chosen, loadChosen, toggle } from './chosen.ts';
import './compare.css';

const pageSize = 60;

function BuildChoice({ build }: { build: BuildSummary }) {
  const on = chosen.value.includes(build.subject);
  const { weight, ratio } = resultWords(build);
  return (
    <li>
      <button
        type="button"
        role="checkbox"
        aria-checked={on}
        class="choose-row"
        onClick={() => toggle(build.subject)}
      >
        <svg width="30" height="30" viewBox="0 0 30 30" aria-hidden="true">
          <rect class="choose-box" x="2" y="2" width="26" height="26" />
          {on && <path class="choose-tick" d="M7 15.5 13 22 23 8" />}
        </svg>
        <span class="choose-text">
          <span class="choose-title">
            {build.name} no. {build.number}
          </span>
          <span class="choose-about">
            {formatDay(build.startedAt, zoneAt(build.startedAt), now.value)}
            {weight ? ` · ${weight}, ${ratio}` : ' · not weighed yet'}
          </span>
        </span>
      </button>
    </li>
  );
}

/** The list may not hold all of them yet. */
async function chooseWeighed(ofPlan: (build: BuildSummary) => boolean): Promise<void> {
  await refreshSummaries();
  const weighed = (allSummaries.peek()?.builds ?? []).filter((b) => b.curedMass !== undefined && ofPlan(b));
  choose([...new Set([...chosen.value, ...weighed.map((b) => b.subject)])]);
}

const countWords = (count: number) =>
  count < 2 ? undefined : count === 2 ? 'Both side by side' : `All ${count} side by side`;

/** Which tubes are to be laid side by side? */
export function ChooseScreen({ params }: { params: Params }) {
  const soon = useBuildsSoon();
  const whole = useAllSummaries() !== undefined;
  const shown = useSignal(pageSize);
  const plan = findDoc('plan', params.plan);
  useEffect(() => {
    loadChosen();
  }, []);
  const ofPlan = (b: BuildSummary) => !plan || b.plan === plan.doc;
  const builds = soon?.filter(ofPlan) ?? [];
  const count = chosen.value.length;
  return (
    <Screen
      title="Compare builds"
      back={plan ? { to: `/plan/${plan.doc}`, label: plan.body.name } : { to: '/record', label: 'Record' }}
      actions={
        <>
          <Beside>
            <Secondary onPress={() => choose([])}>None</Secondary>
            <Secondary onPress={() => chooseWeighed(ofPlan)}>
              {plan ? 'All weighed of it' : 'All weighed'}
            </Secondary>
          </Beside>
          <Action onPress={() => go('/compare')} not={count < 2 ? 'Choose two or more' : undefined}>
            {countWords(count)}
          </Action>
        </>
      }
    >
      <SelectField
        label="Of which plan"
        value={plan?.doc ?? ''}
        options={[
          { value: '', label: 'Any' },
          ...docsOf('plan').map((p) => ({ value: p.doc, label: p.body.name })),
        ]}
        onChange={(doc) => goInstead(doc ? `/compare/choose/${doc}` : '/compare/choose')}
      />
      {whole && builds.length === 0 && (
        <Empty>
          {plan
            ? 'No tube was made by this plan yet.'
            : 'No tubes yet. Two that were weighed can be laid side by side here.'}
        </Empty>
      )}
      <ul class="choose" aria-label="Builds, newest first">
        {builds.slice(0, shown.value).map((b) => (
          <BuildChoice key={b.subject} build={b} />
        ))}
      </ul>
      {builds.length > shown.value && (
        <Secondary onPress={() => (shown.value += pageSize)}>Show older ones</Secondary>
      )}
    </Screen>
  );
}
