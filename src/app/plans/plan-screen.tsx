import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Action, Beside, LinkButton } from '#app/parts/action.tsx';
import { Conflict } from '#app/parts/conflict.tsx';
import { Figures, Lines } from '#app/parts/figure.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Caution, Warning } from '#app/parts/warning.tsx';
import { go, type Params } from '#app/router.ts';
import { findDoc } from '#app/state/documents.ts';
import { nextBuildNumber } from '#app/state/numbers.ts';
import { resinWords } from '#app/state/resin-words.ts';
import { theStore } from '#app/state/shop.ts';
import { show } from '#app/state/show.ts';
import type { Plan } from '#shared/record/plan.ts';
import { formatRatio } from '#shared/units/ratio.ts';
import { lowestLimit, planCautions } from './plan-cautions.ts';
import { estimatePlan, type PlanMaterials, planMaterials } from './plan-estimate.ts';
import { ScheduleLine } from './schedule-line.tsx';

function useCount(count: () => Promise<number>, on: string): number | undefined {
  const counted = useSignal<number | undefined>(undefined);
  useEffect(() => {
    let current = true;
    count().then((n) => {
      if (current) counted.value = n;
    });
    return () => {
      current = false;
    };
  }, [on]);
  return counted.value;
}

function PlanBody({ doc, plan, materials }: { doc: string; plan: Plan; materials: PlanMaterials }) {
  const estimate = estimatePlan(plan, materials);
  const { recipe } = estimate;
  const { cloth, resin, release, tape } = materials;
  return (
    <>
      <Figures
        items={[
          { value: show(estimate.cloth, 'mass', 0), label: 'cloth' },
          { value: show(estimate.kept, 'mass', 0), label: 'resin in it' },
          { value: show(estimate.tube, 'mass', 0), label: 'tube' },
          {
            value: recipe ? show(recipe.total, 'mass', 0) : '–',
            label: recipe ? `to mix, ${recipe.cups} ${recipe.cups === 1 ? 'cup' : 'cups'}` : 'to mix',
          },
        ]}
      />
      {planCautions(plan, materials).map((c) => (
        <Warning key={c.title} kind="amber" title={c.title}>
          {c.says}
        </Warning>
      ))}
      <h2>Cure</h2>
      <ScheduleLine schedule={plan.schedule} {...lowestLimit(materials)} />
      <Lines
        rows={[
          ['Mandrel', show(plan.mandrelDiameter, 'diameter')],
          ['Tube', show(plan.tubeLength, 'length', 0)],
          ['Wall', `${plan.plies} plies, ${show(estimate.wall, 'thickness')}`],
          ['A ply', show(estimate.plyThickness, 'thickness')],
          ['Resin to fabric', formatRatio(estimate.resinShare)],
          ['Fiber volume', show(plan.goal.fiberVolumeFraction, 'fraction', 0)],
          ['Hottest in service', show(plan.serviceTemperature, 'temperature', 0)],
        ]}
      />
      <Lines
        rows={[
          ['Cloth', cloth.name],
          ['Resin', resinWords(resin)],
          ...(release ? [['Release', release.name]] : []),
          ...(tape ? [['Tape', tape.name]] : []),
        ]}
      />
      {plan.wall && (
        <Rows label="Its cloth">
          <Row to={`/plan/${doc}/cutting`} title="Cutting" about="Pieces on the roll, cloth needed" />
          <Row
            to={`/plan/${doc}/template`}
            title="Templates"
            about="True size on paper, or a file for a cutter"
          />
        </Rows>
      )}
      {plan.note && <p>{plan.note}</p>}
      <Caution>
        The wall is your choice: this app does not check strength here. What carries people needs tests, local
        rules and licensed review.
      </Caution>
    </>
  );
}

/** What will this tube be, and shall we make one? */
export function PlanScreen({ params }: { params: Params }) {
  const id = params.doc ?? '';
  const found = findDoc('plan', id);
  const name = found?.body.name ?? '';
  const number = useCount(() => nextBuildNumber(name), name);
  const revisions = useCount(async () => (await theStore().revisions(id)).length, found?.revision.id ?? '');
  const back = { to: '/plans', label: 'Plans' };
  if (!found) {
    return (
      <Screen title="No such plan" back={back}>
        <p>This plan is not on this phone. It may be on another one: restore its backup here.</p>
      </Screen>
    );
  }
  const materials = planMaterials(found.body);
  return (
    <Screen
      kicker={revisions === undefined ? 'Plan' : `Plan · revision ${revisions}`}
      title={name}
      back={back}
      actions={
        <>
          <Beside>
            <LinkButton to={`/plan/${id}/edit`}>Change it</LinkButton>
          </Beside>
          <Action
            onPress={() => go(`/start/${id}`)}
            not={materials ? undefined : 'Its cloth or resin is gone'}
          >
            {number === undefined ? 'Start a tube' : `Start tube no. ${number}`}
          </Action>
        </>
      }
    >
      <Conflict type="plan" doc={found} />
      {materials ? (
        <PlanBody doc={id} plan={found.body} materials={materials} />
      ) : (
        <Warning kind="amber" title="Its cloth or resin is gone">
          Change the plan and choose a cloth and a resin that are on the shelf.
        </Warning>
      )}
    </Screen>
  );
}
