import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Action, Beside, LinkButton } from '#app/parts/action.tsx';
import { Conflict } from '#app/parts/conflict.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { go, type Params } from '#app/router.ts';
import { findDoc } from '#app/state/documents.ts';
import { nextBuildNumber } from '#app/state/numbers.ts';
import { theStore } from '#app/state/shop.ts';
import { PlanBody } from './plan-body.tsx';
import { planMaterials } from './plan-estimate.ts';

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
        <p>
          This plan is not on this phone. It may be on another one: restore its backup under Shelf, Data and
          backup.
        </p>
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
            <LinkButton to={`/plan/${id}/wall`}>
              {found.body.wall ? 'Change its wall' : 'Draw its wall'}
            </LinkButton>
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
