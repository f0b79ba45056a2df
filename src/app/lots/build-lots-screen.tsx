import { Absent } from '#app/parts/absent.tsx';
import { Action } from '#app/parts/action.tsx';
import { Empty } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go, type Params } from '#app/router.ts';
import { record, retract } from '#app/state/record.ts';
import { useBuild } from '#app/state/use-journal.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { lotsFor, type Need } from './choose-lot.ts';
import { drawnDraft, LotDoubt, LotPick, labelOf, needKey } from './start-lots.tsx';
import { useLots } from './use-lots.ts';

/** What this build takes, as its header keeps it; its own draws are in what is left already. */
function needsOfBuild({ header: { takes } }: BuildState): Need[] {
  if (!takes) return [];
  const { cloths, resin, tape } = takes;
  return [
    ...cloths.map(({ item, area }): Need => ({ of: 'cloth', item, amount: area })),
    { of: 'resin', item: resin },
    { of: 'hardener', item: resin },
    ...(tape ? [{ of: 'tape', item: tape } as const] : []),
  ];
}

const drawnFor = ({ lots }: BuildState, need: Need) =>
  lots.filter((l) => l.entry.of === need.of && (l.entry.item === undefined || l.entry.item === need.item));

function Picks({ state }: { state: BuildState }) {
  const shelf = useLots();
  if (!shelf) return null;
  const needs = needsOfBuild(state).filter((n) => lotsFor(n, shelf.lots).length > 0);
  if (needs.length === 0) {
    return <Empty>The shelf has no rolls, cans or reels of what this tube is made of.</Empty>;
  }
  const { id } = state.header;
  return (
    <>
      {needs.map((need) => {
        const drawn = drawnFor(state, need);
        const last = drawn.at(-1)?.entry;
        const lot = shelf.lots.find((l) => l.doc === last?.lot);
        const change = async (doc: string) => {
          const to = shelf.lots.find((l) => l.doc === doc);
          // The tape that was said goes with it.
          const taken =
            need.of === 'tape' && last?.amount !== undefined ? { ...need, amount: last.amount } : need;
          if (to) await record(drawnDraft(id, taken, to, needsOfBuild(state)));
          else for (const { root } of drawn) await retract(id, root);
        };
        // What is left has this build's own share taken off already.
        const asked = { of: need.of, item: need.item };
        return (
          <div key={needKey(need)}>
            <LotPick
              label={labelOf(need, needs)}
              need={asked}
              lots={shelf.lots}
              value={lot?.doc ?? ''}
              onChange={change}
            />
            {lot && <LotDoubt need={asked} lot={lot} />}
          </div>
        );
      })}
    </>
  );
}

/** Which roll, cans and reel is it made from? */
export function BuildLotsScreen({ params }: { params: Params }) {
  const state = useBuild(params.id);
  if (state === undefined) return null;
  if (state === 'absent') return <Absent what="tube" />;
  const back = { to: `/build/${state.header.id}`, label: 'Route' };
  return (
    <Screen
      kicker={`${state.header.name} no. ${state.header.number}`}
      title="Taken from"
      back={back}
      actions={<Action onPress={() => go(back.to)}>Back to the route</Action>}
    >
      <p class="quiet">
        Another can or bottle counts from now on. Cloth and tape are taken from the one that is chosen last.
      </p>
      <Picks state={state} />
    </Screen>
  );
}
