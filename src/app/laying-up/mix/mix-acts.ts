import { record, retract } from '#app/state/record.ts';
import { theStore } from '#app/state/shop.ts';
import { recordUndoable } from '#app/state/undo.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { CupState } from '#shared/record/cup-state.ts';
import { cupLife, massOf } from './cup-life.ts';
import { cupError, mixingOf, type Part } from './cup-phase.ts';
import type { MixPlan } from './mix-plan.ts';

/** A pot life warns when this share of it is left. */
const warnsAtShare = 0.2;

export function startCup(
  { header, rounds }: BuildState,
  each: MixPlan['each'],
  next: MixPlan['next'],
): Promise<boolean> {
  return record({
    kind: 'cupStarted',
    subject: header.id,
    cup: theStore().newId(),
    round: rounds,
    ...next,
    resin: each.resin,
    hardener: each.hardener,
    holds: header.resin.largestCup,
  });
}

export interface Pour {
  part: Part;
  /** kg of this pour alone */
  mass: number;
  typed: string;
  asItIs?: 'lean' | 'rich' | undefined;
}

export function pour(subject: string, cup: CupState, { part, mass, typed, asItIs }: Pour): Promise<boolean> {
  return record({ kind: 'pour', subject, cup: cup.cup, part, mass, typed, ...(asItIs && { asItIs }) });
}

/** The pot life counts from here; the weight follows. */
export function hardenerGoesIn(state: BuildState, cup: CupState): Promise<boolean> {
  const { header, rounds } = state;
  const { usable: lasts, basis } = cupLife(state, massOf(state, cup), Date.now());
  return record({
    kind: 'clockStarted',
    subject: header.id,
    clock: theStore().newId(),
    purpose: 'potLife',
    label: `Cup ${cup.number}`,
    lasts,
    warns: warnsAtShare * lasts,
    cup: cup.cup,
    round: rounds,
    basis,
  });
}

/** Takes a cup that is off its ratio as it is, without a further pour: its last pour says so from now on. */
export async function takeAsItIs({ header }: BuildState, cup: CupState): Promise<boolean> {
  const last = cup.pours.at(-1);
  const error = cupError(cup, mixingOf(header.resin));
  if (!last || error === undefined) return false;
  const { part, mass, typed, happenedAt } = last.entry;
  return record({
    kind: 'pour',
    subject: header.id,
    cup: cup.cup,
    part,
    mass,
    happenedAt,
    asItIs: error < 0 ? 'lean' : 'rich',
    corrects: last.root,
    ...(typed !== undefined && { typed }),
  });
}

export function cupIsEmpty({ header }: BuildState, cup: CupState): Promise<boolean> {
  return recordUndoable(
    { kind: 'cupEmpty', subject: header.id, cup: cup.cup },
    { said: `Cup ${cup.number} is empty` },
  );
}

export function throwOut({ header }: BuildState, cup: CupState): Promise<boolean> {
  return recordUndoable(
    { kind: 'cupDiscarded', subject: header.id, cup: cup.cup },
    { said: `Cup ${cup.number} is thrown out` },
  );
}

export interface Undo {
  label: string;
  undo: () => Promise<boolean>;
}

/** What the last press on a cup was, and how it is taken back. */
export function lastPress({ header, clocks }: BuildState, cup: CupState): Undo {
  const undo = (root: string) => () => retract(header.id, root);
  const last = cup.pours.at(-1);
  const clock = clocks.find((c) => c.purpose === 'potLife' && c.cup === cup.cup);
  if (clock && cup.hardener <= 0) return { label: 'Hardener is not in yet', undo: undo(clock.root) };
  if (last) return { label: `Weigh the ${last.entry.part} again`, undo: undo(last.root) };
  return { label: `Do not start cup ${cup.number}`, undo: undo(cup.root) };
}
