import { type Signal, signal } from '@preact/signals';
import * as z from 'zod/mini';
import { type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import { clothBody, fibers } from '#shared/record/cloth.ts';
import { coreBody } from '#shared/record/core.ts';
import { mandrelBody } from '#shared/record/mandrel.ts';
import { releaseSystemBody } from '#shared/record/release-system.ts';
import { resinSystemBody } from '#shared/record/resin-system.ts';
import type { Body } from '#shared/record/revision.ts';
import { type PullPoint, tapeBody } from '#shared/record/tape.ts';
import { fiberDensities } from '#shared/reference/fiber-densities.ts';
import { type Field, itemFields } from './fields.ts';
import type { ItemType } from './kinds.ts';
import { ownNote } from './own-note.ts';
import { type PointRow, pointRow, writtenRow } from './point-rows.ts';

export interface CurePointInput {
  temperature: QuantityInput;
  time: QuantityInput;
}

export interface PullPointInput {
  temperature: QuantityInput;
  force: QuantityInput;
}

/** A thing on the shelf while it is written down: numbers, words and texts by where they stand in it. */
export interface ItemDraft {
  type: ItemType;
  numbers: Map<string, QuantityInput>;
  texts: Map<string, Signal<string>>;
  curePoints: Signal<readonly CurePointInput[]>;
  pullPoints: Signal<readonly PullPointInput[]>;
  /** Other points of a data sheet, by where they stand. */
  lists: Map<string, Signal<readonly PointRow[]>>;
  /** Whether the part with more of the data sheet stands open. */
  moreOpen: Signal<boolean>;
  /** Problems are shown from the first press on. */
  pressed: Signal<boolean>;
}

type Loose = Record<string, unknown>;
const isLoose = (value: unknown): value is Loose => typeof value === 'object' && value !== null;

/** What stands at 'potLife.time' of a body. */
export function valueAt(body: unknown, path: string): unknown {
  return path.split('.').reduce<unknown>((at, key) => (isLoose(at) ? at[key] : undefined), body);
}

/** A copy of the body with another value there; undefined takes it out. What this version does not know stays. */
function withValue(body: Loose, [key = '', ...rest]: string[], value: unknown): Loose {
  const { [key]: old, ...others } = body;
  const next = rest.length === 0 ? value : withValue(isLoose(old) ? old : {}, rest, value);
  // Without this a pair that stays empty would be left as an object with nothing in it.
  const nothing = value === undefined && isLoose(next) && Object.keys(next).length === 0;
  return next === undefined || nothing ? others : { ...others, [key]: next };
}

interface CurePoint {
  temperature: number;
  time: number;
}

/** A line that was added and never written on is no line. */
const isBlank = (inputs: readonly QuantityInput[]) => inputs.every((i) => i.text.value.trim() === '');
const written = <Line>(lines: readonly Line[], numbers: (line: Line) => readonly QuantityInput[]): Line[] =>
  lines.filter((line) => !isBlank(numbers(line)));
const curePoints = (draft: ItemDraft) => written(draft.curePoints.value, (p) => [p.temperature, p.time]);
const pullPoints = (draft: ItemDraft) => written(draft.pullPoints.value, (p) => [p.temperature, p.force]);
const rowsOf = (list: Signal<readonly PointRow[]> | undefined) =>
  written(list?.value ?? [], (r) => [...r.numbers.values()]);

export function curePointInput(point?: CurePoint): CurePointInput {
  return {
    temperature: quantityInput(point?.temperature, { quantity: 'temperature', min: 263.15, max: 673.15 }),
    time: quantityInput(point?.time, { quantity: 'duration', min: 60, max: 60 * 86_400 }),
  };
}

export function pullPointInput(point?: PullPoint): PullPointInput {
  return {
    temperature: quantityInput(point?.temperature, { quantity: 'temperature', min: 273.15, max: 673.15 }),
    force: quantityInput(point?.force, { quantity: 'pull', min: 0, max: 20_000 }),
  };
}

function pointsAt<T>(body: unknown, path: string): T[] {
  const points = valueAt(body, path);
  return Array.isArray(points) ? points : [];
}

function textFor(field: Field, body: Body<ItemType> | undefined): string {
  const kept = valueAt(body, field.path);
  if (field.path === 'note' && body?.typical) return ownNote(String(kept ?? ''));
  const first = field.as === 'word' ? field.words[0]?.value : '';
  return typeof kept === 'string' ? kept : (first ?? '');
}

export function itemDraft(type: ItemType, body?: Body<ItemType>): ItemDraft {
  const draft: ItemDraft = {
    type,
    numbers: new Map(),
    texts: new Map(),
    curePoints: signal(pointsAt<CurePoint>(body, 'curePoints').map(curePointInput)),
    pullPoints: signal(pointsAt<PullPoint>(body, 'shrinkForce').map(pullPointInput)),
    lists: new Map(),
    moreOpen: signal(false),
    pressed: signal(false),
  };
  for (const field of itemFields[type]) {
    if (field.as === 'number') {
      const kept = valueAt(body, field.path);
      draft.numbers.set(
        field.path,
        quantityInput(typeof kept === 'number' ? kept : undefined, field.options),
      );
    } else if (field.as === 'points') {
      const rows = pointsAt<Loose>(body, field.path).map((kept) => pointRow(field, kept));
      draft.lists.set(field.path, signal(rows));
    } else if (field.as === 'word' || field.as === 'text')
      draft.texts.set(field.path, signal(textFor(field, body)));
  }
  if (!body) chooseWord(draft, 'fiber', draft.texts.get('fiber')?.value ?? '');
  return draft;
}

/** A word is chosen. With a fiber comes its usual density, unless another was typed. */
export function chooseWord({ type, numbers, texts }: ItemDraft, path: string, value: string): void {
  const word = texts.get(path);
  if (word) word.value = value;
  const density = numbers.get('fiberDensity');
  const fiber = fibers.find((f) => f === value);
  if (type !== 'cloth' || path !== 'fiber' || !density || !fiber) return;
  const usual: readonly (number | undefined)[] = Object.values(fiberDensities);
  const typed = density.text.value.trim() !== '' && !usual.includes(density.si.value);
  if (!typed) density.set(fiberDensities[fiber]);
}

/** The fields that are asked for as things stand. */
export function askedFields({ type, texts }: ItemDraft): Field[] {
  return itemFields[type].filter(({ only }) => !only || texts.get(only[0])?.value === only[1]);
}

function sameHeat({ pullPoints }: ItemDraft): string | undefined {
  const heats = pullPoints.value.flatMap((p) => p.temperature.si.value ?? []);
  return new Set(heats).size === heats.length
    ? undefined
    : 'Two pulls at one temperature cannot both be right: take one of the lines out.';
}

/** One sentence for what two fields say together. */
export function pairProblem(draft: ItemDraft, path: string): string | undefined {
  const at = (key: string) => draft.numbers.get(key)?.si.value;
  if (draft.type === 'mandrel' && path === 'wall') {
    const tooThick = (at('wall') ?? 0) > (at('diameter') ?? Number.POSITIVE_INFINITY) / 2;
    return tooThick
      ? 'A wall is at most half the diameter: check the two, or leave it empty for a bar.'
      : undefined;
  }
  if (path === 'thinFilm.temperature') {
    const half = (at('thinFilm.time') === undefined) !== (at(path) === undefined);
    return half ? 'A thin film needs both, its time and its temperature, or neither.' : undefined;
  }
  if (draft.type !== 'tape') return undefined;
  if (path === 'shrinkForce') return sameHeat(draft);
  const [shrinks, pulls, highest] = [at('shrinksFrom'), at('pullsFrom'), at('highestTemperature')];
  if (path === 'pullsFrom' && shrinks !== undefined && pulls !== undefined && pulls < shrinks) {
    return 'It cannot pull hardest before it begins to shrink: check the two.';
  }
  if (path === 'highestTemperature' && highest !== undefined && pulls !== undefined && highest < pulls) {
    return 'It would fail before it pulls: what it stands is not below where it pulls hardest.';
  }
  return undefined;
}

export function textProblem(draft: ItemDraft, field: Field): string | undefined {
  if (field.as !== 'text') return undefined;
  const text = draft.texts.get(field.path)?.value.trim() ?? '';
  if (text.length > (field.long ? 20_000 : 200)) return 'That is too long for this field: shorten it.';
  return text || field.optional ? undefined : `Write something here, like ${field.example ?? 'a name'}.`;
}

/** Shows every problem; true when there is none. */
export function isGood(draft: ItemDraft): boolean {
  draft.pressed.value = true;
  const asked = askedFields(draft);
  const points = [
    ...curePoints(draft).flatMap((p) => [p.temperature, p.time]),
    ...pullPoints(draft).flatMap((p) => [p.temperature, p.force]),
  ];
  const numbers = asked.flatMap(({ path }) => draft.numbers.get(path) ?? []);
  const rows = [...draft.lists.values()].flatMap((list) =>
    rowsOf(list).flatMap((r) => [...r.numbers.values()]),
  );
  points.push(...rows);
  for (const input of [...numbers, ...points]) input.touched.value = true;
  // A problem in the part that is closed could not be found.
  const hidden = asked.flatMap((f) => (f.more ? (draft.numbers.get(f.path) ?? []) : []));
  const half = asked.some((f) => f.more && pairProblem(draft, f.path));
  if (half || [...hidden, ...rows].some((input) => input.problem.value !== undefined)) {
    draft.moreOpen.value = true;
  }
  return (
    [...numbers, ...points].every((input) => input.problem.value === undefined) &&
    asked.every((f) => textProblem(draft, f) === undefined && pairProblem(draft, f.path) === undefined)
  );
}

function bodyPart(draft: ItemDraft, field: Field): unknown {
  if (field.as === 'number') return draft.numbers.get(field.path)?.si.value;
  if (field.as === 'curePoints') {
    return curePoints(draft).map((p) => ({
      temperature: p.temperature.si.value,
      time: p.time.si.value,
    }));
  }
  if (field.as === 'pullPoints') return writtenPulls(draft);
  if (field.as === 'points') {
    const rows = rowsOf(draft.lists.get(field.path));
    return rows.length > 0 ? rows.map((row) => writtenRow(field, row)) : undefined;
  }
  return draft.texts.get(field.path)?.value.trim() || undefined;
}

/** From cold to hot, in whatever order they were written down; none at all is no list. */
function writtenPulls(draft: ItemDraft): unknown {
  const points = pullPoints(draft);
  if (points.length === 0) return undefined;
  return points
    .map((p) => ({ temperature: p.temperature.si.value, force: p.force.si.value }))
    .sort((a, b) => (a.temperature ?? 0) - (b.temperature ?? 0));
}

const schemas = {
  cloth: clothBody,
  resin: resinSystemBody,
  release: releaseSystemBody,
  tape: tapeBody,
  mandrel: mandrelBody,
  core: coreBody,
} satisfies Record<ItemType, z.ZodMiniType>;

/** As typed, and no longer typical; undefined while something is missing. */
export function bodyOf(draft: ItemDraft, before?: Body<ItemType>): Body<ItemType> | undefined {
  const { typical: _, ...kept } = (before ?? {}) as Loose;
  let body: Loose = kept;
  for (const { path } of itemFields[draft.type]) body = withValue(body, path.split('.'), undefined);
  for (const field of askedFields(draft))
    body = withValue(body, field.path.split('.'), bodyPart(draft, field));
  const checked = z.safeParse<z.ZodMiniType>(schemas[draft.type], body);
  return checked.success ? (checked.data as Body<ItemType>) : undefined;
}
