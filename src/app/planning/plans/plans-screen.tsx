import { Action } from '#app/parts/action.tsx';
import { HomeScreenFirst } from '#app/parts/home-screen-first.tsx';
import { Empty, Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { plannedOf } from '#app/planning/ledger/part-facts.ts';
import { go } from '#app/router.ts';
import { docsOf } from '#app/state/documents.ts';
import { show } from '#app/state/show.ts';

/** As its page says it: a drawn wall goes before the plies of the plan. */
function tubeMass(doc: string): string | undefined {
  const planned = plannedOf(doc);
  return planned && show(planned.mass, 'mass', 0);
}

/** Which tubes does this shop know how to make? */
export function PlansScreen() {
  const plans = docsOf('plan');
  return (
    <Screen title="Plans" actions={<Action onPress={() => go('/plan/new')}>Write a new plan</Action>}>
      <HomeScreenFirst />
      {plans.length === 0 ? (
        <Empty>
          No plans yet. A plan keeps mandrel, cloth, resin, tape and cure of one kind of tube, so that the
          next one starts in two taps. A tube can also be started without one, from the bench.
        </Empty>
      ) : (
        <Rows label="Plans">
          {plans.map(({ doc, body, others }) => (
            <Row
              key={doc}
              to={`/plan/${doc}`}
              title={body.name}
              about={
                others.length > 0
                  ? 'Changed on two phones: open it to choose'
                  : `${show(body.tubeLength, 'length', 0)} on ${show(body.mandrelDiameter, 'diameter')}, ${body.plies} plies`
              }
              value={tubeMass(doc)}
            />
          ))}
        </Rows>
      )}
      <Rows label="What they are for">
        <Row
          to="/ledger"
          title="Structures"
          about="Tubes of one mast set or frame against its weight budget"
        />
      </Rows>
    </Screen>
  );
}
