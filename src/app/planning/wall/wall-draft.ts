import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { findDoc, saveDoc } from '#app/state/documents.ts';
import { theStore } from '#app/state/shop.ts';
import { type Roll, rollPieces } from '#calc';
import type { ShapeRecord } from '#shared/record/piece.ts';
import type { Plan } from '#shared/record/plan.ts';
import { planWithWall } from './plan-with-wall.ts';
import { firstWall, type WallState } from './wall-edits.ts';
import { flatPieces, hasWall, rollOf, theShelf, type WalledPlan } from './wall-model.ts';
import { type WallProblem, wallProblem } from './wall-words.ts';

/** The last wall that could be rolled. */
export interface Drawn {
  plan: WalledPlan;
  roll: Roll;
}

/** A wall being drawn. It outlives its screens; what is saved is a revision of its plan. */
export interface WallDraft {
  doc: string;
  state: ReadonlySignal<WallState>;
  /** The plan with the wall as it stands now, also when it cannot be rolled. */
  plan: ReadonlySignal<WalledPlan | undefined>;
  drawn: ReadonlySignal<Drawn>;
  problem: ReadonlySignal<WallProblem | undefined>;
  changed: ReadonlySignal<boolean>;
  canUndo: ReadonlySignal<boolean>;
  /** A thumb is dragging: what need not follow it waits until it lets go. */
  moving: Signal<boolean>;
  /** Edits of one gesture have one name, and are undone together. */
  change: (next: WallState, gesture?: string) => void;
  undo: () => void;
  /** True when it is on disk. */
  save: () => Promise<boolean>;
}

const drafts = new Map<string, WallDraft>();
/** Samples of a tube while a thumb drags, besides its stations: as many as a phone has points across. */
const underThumb = 360;
/** More steps back than anybody takes. */
const mostUndo = 100;

function stateOf(plan: Plan): WallState {
  if (hasWall(plan)) {
    const { wall, tubeLength: length, mandrel } = plan;
    return { wall, length, ...(mandrel !== undefined && { mandrelId: mandrel }) };
  }
  const mandrel = findDoc('mandrel', plan.mandrel)?.body;
  return firstWall(plan, theStore().newId(), 'Piece 1', mandrel?.length ?? 0);
}

/** What stands there until something can be rolled: a wall whose cloth is gone must still open to be mended. */
function bareMandrel(plan: Plan): Drawn {
  const { mandrelDiameter: value, tubeLength: length } = plan;
  const mandrel: ShapeRecord = {
    between: 'straight',
    stations: [
      { at: 0, value },
      { at: length, value },
    ],
  };
  const roll = rollPieces({ mandrel, pieces: [], length, step: length / 100, mayBeOpen: true });
  return { plan: { ...plan, wall: { mandrel, pieces: [] } }, roll };
}

function drawnPlan({ mandrel: _, ...plan }: Plan, { wall, length, mandrelId }: WallState): WalledPlan {
  return { ...plan, wall, tubeLength: length, ...(mandrelId !== undefined && { mandrel: mandrelId }) };
}

type Rolled = { good: Drawn } | { problem: WallProblem };

function roll(plan: WalledPlan | undefined, moving: boolean): Rolled | undefined {
  if (!plan) return undefined;
  try {
    const rolled = moving ? rollOf(plan, theShelf, plan.tubeLength / underThumb) : rollOf(plan);
    if (!moving) flatPieces(rolled);
    return { good: { plan, roll: rolled } };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { problem: wallProblem(error, plan.wall) };
  }
}

interface Past {
  states: readonly WallState[];
  gesture: string | undefined;
}

function history(first: WallState) {
  const state = signal(first);
  const past: Signal<Past> = signal({ states: [], gesture: undefined });
  const change = (next: WallState, gesture?: string) => {
    if (next === state.peek()) return;
    const { states, gesture: last } = past.peek();
    const goesOn = gesture !== undefined && gesture === last;
    past.value = { states: goesOn ? states : [...states, state.peek()].slice(-mostUndo), gesture };
    state.value = next;
  };
  const undo = () => {
    const { states } = past.peek();
    const before = states.at(-1);
    if (!before) return;
    past.value = { states: states.slice(0, -1), gesture: undefined };
    state.value = before;
  };
  return { state, past, change, undo };
}

function makeDraft(doc: string, body: Plan): WallDraft {
  const { state, past, change, undo } = history(stateOf(body));
  const saved = signal(hasWall(body) ? state.peek() : undefined);
  const plan = computed<WalledPlan | undefined>(() => {
    const now = findDoc('plan', doc)?.body;
    return now && drawnPlan(now, state.value);
  });
  const moving = signal(false);
  const rolled = computed(() => roll(plan.value, moving.value));
  let last = bareMandrel(body);
  const drawn = computed(() => {
    // A figure that is wrong leaves the last good picture where it is.
    if (rolled.value && 'good' in rolled.value) last = rolled.value.good;
    return last;
  });
  const problem = computed(() =>
    rolled.value && 'problem' in rolled.value ? rolled.value.problem : undefined,
  );
  const save = async () => {
    const now = findDoc('plan', doc)?.body;
    if (!now || problem.peek()) return false;
    const written = await saveDoc('plan', planWithWall(drawnPlan(now, state.peek())), { doc });
    if (written === undefined) return false;
    saved.value = state.peek();
    return true;
  };
  return {
    doc,
    state,
    plan,
    drawn,
    problem,
    changed: computed(() => saved.value !== state.value),
    canUndo: computed(() => past.value.states.length > 0),
    moving,
    change,
    undo,
    save,
  };
}

/** The wall of a plan as it is being drawn; undefined when there is no such plan. */
export function wallDraft(doc: string): WallDraft | undefined {
  const found = findDoc('plan', doc);
  const known = drafts.get(doc);
  if (!found) return undefined;
  // Changed elsewhere, and nothing drawn here since: what is on disk holds.
  if (known && (known.changed.peek() || known.state.peek().wall === found.body.wall)) return known;
  const draft = makeDraft(doc, found.body);
  drafts.set(doc, draft);
  return draft;
}
