import { useSignal } from '@preact/signals';
import { Absent } from '#app/parts/absent.tsx';
import { Action } from '#app/parts/action.tsx';
import { Empty } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go, type Params } from '#app/router.ts';
import { lotsInUse } from '#app/state/draws.ts';
import { record, retract } from '#app/state/record.ts';
import { useBuild } from '#app/state/use-journal.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { type LotOnShelf, lotsFor, type Need } from './choose-lot.ts';
import { showAmount } from './lot-words.ts';
import { PartOfItSheet } from './part-of-it-sheet.tsx';
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

/** 'Roll 1, and 0.30 m² of Roll 2' */
function Besides({ state, need }: { state: BuildState; need: Need }) {
  const shares = lotsInUse(drawnFor(state, need), need.of).flat();
  if (!shares.some((s) => s.own !== undefined)) return null;
  const words = shares.map(({ entry, own }) =>
    own === undefined ? entry.label : `${showAmount(need.of, own)} of ${entry.label}`,
  );
  return <p class="quiet">From {words.join(', and ')}.</p>;
}

function Picks({ state }: { state: BuildState }) {
  const shelf = useLots();
  const asked = useSignal<{ need: Need; before: LotOnShelf; to: LotOnShelf } | undefined>(undefined);
  if (!shelf) return null;
  const needs = needsOfBuild(state).filter((n) => lotsFor(n, shelf.lots).length > 0);
  if (needs.length === 0) {
    return <Empty>The shelf has no rolls, cans or reels of what this tube is made of.</Empty>;
  }
  const { id } = state.header;
  const close = () => {
    asked.value = undefined;
  };
  const take = async (more: { amount: number; besides: true } | undefined) => {
    if (!asked.value) return;
    const { need, to } = asked.value;
    if (await record({ ...drawnDraft(id, need, to, needsOfBuild(state)), ...more })) close();
  };
  return (
    <>
      {asked.value && (
        <PartOfItSheet
          {...asked.value}
          onAll={() => take(undefined)}
          onPart={(amount) => take({ amount, besides: true })}
          onClose={close}
        />
      )}
      {needs.map((need) => {
        const drawn = drawnFor(state, need);
        const last = drawn.at(-1)?.entry;
        const lot = shelf.lots.find((l) => l.doc === last?.lot);
        const change = async (doc: string) => {
          const to = shelf.lots.find((l) => l.doc === doc);
          // The tape that was said goes with it.
          const taken =
            need.of === 'tape' && last?.amount !== undefined ? { ...need, amount: last.amount } : need;
          const inOneGo = need.of === 'cloth' || need.of === 'tape';
          if (to && inOneGo && lot && lot.doc !== to.doc) asked.value = { need: taken, before: lot, to };
          else if (to) await record(drawnDraft(id, taken, to, needsOfBuild(state)));
          else for (const { root } of drawn) await retract(id, root);
        };
        // What is left has this build's own share taken off already.
        const plain = { of: need.of, item: need.item };
        return (
          <div key={needKey(need)}>
            <LotPick
              label={labelOf(need, needs)}
              need={plain}
              lots={shelf.lots}
              value={lot?.doc ?? ''}
              onChange={change}
            />
            {lot && <LotDoubt need={plain} lot={lot} />}
            <Besides state={state} need={need} />
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
        Another can or bottle counts from now on. Of cloth and tape you say how much the other one gives.
      </p>
      <Picks state={state} />
    </Screen>
  );
}
