import { Action, Secondary } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { NoPlan } from '#app/planning/wall/no-plan.tsx';
import { go, type Params } from '#app/router.ts';
import { theStore } from '#app/state/shop.ts';
import type { LoadCase, LoadRecord } from '#shared/record/load-plan.ts';
import { chooseCase } from './chosen-case.ts';
import { dropDraft, keptDraft } from './kept-draft.ts';
import { loadDraft, loadIsGood, loadOfDraft } from './load-draft.ts';
import { LoadFields } from './load-fields.tsx';
import { withLoad, withoutLoad } from './loads-edits.ts';
import { NotThere } from './not-there.tsx';
import { saveLoads } from './save.ts';
import { Sketch } from './sketch.tsx';
import { focusWrong, type LoadedPlan, loadedPlan } from './use-plan.ts';

interface Props {
  of: LoadedPlan;
  one: LoadCase;
  load: LoadRecord | undefined;
}

function Editor({ of, one, load }: Props) {
  const { found, loads, length, home } = of;
  const key = `${found.doc} load ${one.id} ${load?.id ?? 'new'}`;
  const draft = keptDraft(key, { load, length }, () => loadDraft(load, length));
  const id = load?.id ?? 'new';
  const drawn = loadOfDraft(draft, id, length);
  const others = one.loads.filter((l) => l.id !== id);
  const done = () => {
    chooseCase(found.doc, one.id);
    go(home);
  };
  const save = async () => {
    const made = loadOfDraft(draft, load?.id ?? theStore().newId(), length);
    if (!loadIsGood(draft) || !made) {
      focusWrong();
      return;
    }
    if (!(await saveLoads(found.doc, (now) => withLoad(now, one, made)))) return;
    dropDraft(key);
    done();
  };
  const remove = async () => {
    if (load && (await saveLoads(found.doc, (now) => withoutLoad(now, one.id, load.id)))) done();
  };
  return (
    <Screen
      kicker={`${found.body.name} · ${one.name}`}
      title={load ? 'Change the load' : 'New load'}
      back={{ to: home, label: 'Loads' }}
      actions={<Action onPress={save}>{load ? 'Save the change' : `Load is in ${one.name}`}</Action>}
    >
      <Sketch
        length={length}
        supports={loads.supports}
        loads={drawn ? [...others, drawn] : others}
        chosen={id}
      />
      <LoadFields draft={draft} length={length} />
      {load?.typed && <p class="quiet small">Written as {load.typed}</p>}
      {load && <Secondary onPress={remove}>Take this load out</Secondary>}
    </Screen>
  );
}

/** The case a load goes into; the first load of a plan brings its case along. */
const firstCases = new Map<string, LoadCase>();

function firstCase(doc: string): LoadCase {
  const made = firstCases.get(doc) ?? { id: theStore().newId(), name: 'Case 1', loads: [] };
  firstCases.set(doc, made);
  return made;
}

/** What pulls on the tube, where and how hard? */
export function LoadScreen({ params }: { params: Params }) {
  const of = loadedPlan(params.doc);
  if (!of) return <NoPlan />;
  const { cases } = of.loads;
  const first = params.case === 'first';
  const one = first ? (cases[0] ?? firstCase(of.found.doc)) : cases.find((c) => c.id === params.case);
  const load = one?.loads.find((l) => l.id === params.load);
  if (!one || (!load && params.load !== 'new')) return <NotThere of={of} what="load" />;
  return <Editor key={params.load} of={of} one={one} load={load} />;
}
