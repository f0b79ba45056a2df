import { Action, Beside, LinkButton, Secondary } from '#app/parts/action.tsx';
import { Conflict } from '#app/parts/conflict.tsx';
import { Choice } from '#app/parts/field.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Caution, Warning } from '#app/parts/warning.tsx';
import { NoPlan } from '#app/planning/wall/no-plan.tsx';
import { go, type Params } from '#app/router.ts';
import { chooseCase, chosenCase } from './chosen-case.ts';
import { AskedRows, FittingRows, LoadRows, SupportRows } from './loads-lists.tsx';
import { mixedUnits } from './mixed-units.ts';
import { canUndoLoads, undoLoads } from './save.ts';
import { Sketch } from './sketch.tsx';
import { Troubles } from './troubles-list.tsx';
import { troublesOf } from './troubles-of.ts';
import { type LoadedPlan, loadedPlan } from './use-plan.ts';

/** Which case is drawn and listed. */
function Cases({ of, chosen }: { of: LoadedPlan; chosen: string }) {
  const { found, loads } = of;
  if (loads.cases.length < 2) return null;
  return (
    <Choice
      label="Load case"
      value={chosen}
      options={loads.cases.map(({ id, name }) => ({ value: id, label: name }))}
      onChange={(id) => chooseCase(found.doc, id)}
    />
  );
}

/** What is missing is said by the main action; what is wrong is said here, each in its sentence. */
function Body({ of }: { of: LoadedPlan }) {
  const { found, loads, length, home } = of;
  const one = chosenCase(found.doc, loads);
  const mixed = one && mixedUnits(one);
  const troubles = troublesOf(found.doc, found.body);
  return (
    <>
      <Conflict type="plan" doc={found} />
      <Sketch length={length} supports={loads.supports} loads={one?.loads ?? []} />
      <Cases of={of} chosen={one?.id ?? ''} />
      <Troubles troubles={troubles} />
      <Beside>
        {canUndoLoads(found.doc) && <Secondary onPress={() => undoLoads(found.doc)}>Undo</Secondary>}
        {one && <LinkButton to={`${home}/lines/${one.id}`}>Moment and shear</LinkButton>}
      </Beside>
      {mixed && (
        <Warning kind="amber" title="Two kinds of unit">
          {mixed}
        </Warning>
      )}
      <SupportRows of={of} />
      <LoadRows of={of} one={one} />
      <AskedRows of={of} />
      <FittingRows of={of} />
      <Caution>
        Down in the picture is the way the main load goes. Self weight is not added: write it as a spread load
        where it counts.
      </Caution>
    </>
  );
}

/** How is it held and what pulls on it? */
export function LoadsScreen({ params }: { params: Params }) {
  const of = loadedPlan(params.doc);
  if (!of) return <NoPlan />;
  const { found, home } = of;
  const [first] = troublesOf(found.doc, found.body);
  return (
    <Screen
      kicker={found.body.name}
      title="Held and loaded"
      back={{ to: `/plan/${found.doc}`, label: found.body.name }}
      actions={
        <Action onPress={() => go(first ? first.to : `${home}/margins`)}>
          {first ? first.act : 'See the margins'}
        </Action>
      }
    >
      <Body of={of} />
    </Screen>
  );
}
