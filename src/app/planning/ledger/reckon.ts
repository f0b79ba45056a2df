import { centerOfGravity } from '#calc';
import type { StructurePart } from '#shared/record/structure.ts';

/** A build that became a part: what it weighs, and what of that was not planned, kg. */
export interface MadePart {
  build: string;
  title: string;
  /** As it goes in; undefined until it is weighed. */
  mass?: number;
  /** By the plan it was started from, kg */
  planned?: number;
  filmLeft?: number;
  /** Resin in it over what its fiber volume wants; below 0 it came out lean. */
  resinOver?: number;
}

/** What is known of a part from plans and builds. */
export interface PartFacts {
  part: StructurePart;
  /** One of them by today's plan, kg */
  planned?: number;
  made: readonly MadePart[];
  /** What the shaped wall of one saves against its thickest wall throughout, kg */
  saved?: number;
}

export interface PartSum {
  part: StructurePart;
  /** Of all of them, kg */
  budget?: number;
  planned?: number;
  /** Of the weighed ones, each by the plan it was started from, kg */
  plannedThen?: number;
  actual: number;
  /** How many of the quantity are weighed. */
  weighed: number;
  toGo: number;
  /** Weighed, and the rest by plan, kg; undefined where nothing tells what one weighs. */
  expected?: number;
  /** Expected over budget, kg; below 0 there is room. */
  over?: number;
  /** What of the weighed ones was not planned, kg */
  film: number;
  resin: number;
  /** Weighed over planned, besides film and resin. */
  other: number;
  saved: number;
}

export interface StructureSum {
  parts: PartSum[];
  budget?: number;
  planned: number;
  actual: number;
  /** Still to be made, by plan. */
  toGo: number;
  expected: number;
  /** Budget less expected, kg; below 0 it is over. */
  left?: number;
  /** Parts of which nothing tells what they weigh. */
  unknown: string[];
  saved: number;
  /** Of what it would weigh without. */
  savedShare: number;
  /** m along the axis; undefined while nothing is placed. */
  balance?: number;
  /** Parts without a position, where others have one. */
  notPlaced: string[];
}

const sum = (values: readonly (number | undefined)[]): number =>
  values.reduce<number>((total, value) => total + (value ?? 0), 0);

/** Nothing where one of them is not known. */
const allOf = (values: readonly (number | undefined)[]): number | undefined =>
  values.some((v) => v === undefined) ? undefined : sum(values);

const times = (count: number, one: number | undefined) => (one === undefined ? undefined : count * one);

/** A part without a plan is weighed once for all its pieces. */
function weighedOf({ part, made }: PartFacts): number[] {
  if (part.plan !== undefined) return made.flatMap((m) => m.mass ?? []);
  return part.weighed === undefined ? [] : Array.from({ length: part.quantity }, () => part.weighed ?? 0);
}

export function reckonPart(facts: PartFacts): PartSum {
  const { part, planned, made, saved = 0 } = facts;
  const weights = weighedOf(facts);
  const actual = sum(weights);
  const toGo = Math.max(0, part.quantity - weights.length);
  const rest = toGo === 0 ? 0 : times(toGo, planned);
  const expected = rest === undefined ? undefined : actual + rest;
  const budget = times(part.quantity, part.budget);
  const weighed = made.filter((m) => m.mass !== undefined);
  const plannedThen = allOf(
    part.plan === undefined ? weights.map(() => planned) : weighed.map((m) => m.planned ?? planned),
  );
  const all = rest === undefined || plannedThen === undefined ? undefined : plannedThen + rest;
  const film = sum(weighed.map((m) => m.filmLeft));
  const resin = sum(weighed.map((m) => m.resinOver));
  return {
    part,
    ...(budget !== undefined && { budget }),
    ...(all !== undefined && { planned: all }),
    ...(plannedThen !== undefined && weights.length > 0 && { plannedThen }),
    actual,
    weighed: weights.length,
    toGo,
    ...(expected !== undefined && { expected }),
    ...(expected !== undefined && budget !== undefined && { over: expected - budget }),
    film,
    resin,
    other: plannedThen === undefined ? 0 : actual - plannedThen - film - resin,
    saved: saved * Math.max(part.quantity, weights.length),
  };
}

/** What everything comes to; the budget is the structure's own, else that of its parts when each has one. */
export function reckonStructure(input: { budget?: number; parts: readonly PartFacts[] }): StructureSum {
  const parts = input.parts.map(reckonPart);
  const everyBudget = parts.length > 0 && parts.every((p) => p.budget !== undefined);
  const budget = input.budget ?? (everyBudget ? sum(parts.map((p) => p.budget)) : undefined);
  const actual = sum(parts.map((p) => p.actual));
  const expected = sum(parts.map((p) => p.expected ?? p.actual));
  const saved = sum(parts.map((p) => p.saved));
  const placed = parts.flatMap(({ part: { position }, expected: mass }) =>
    position !== undefined && mass !== undefined && mass > 0 ? [{ mass, position }] : [],
  );
  const anyPlaced = parts.some((p) => p.part.position !== undefined);
  const missing = parts.filter((p) => p.part.position === undefined || !p.expected);
  return {
    parts,
    ...(budget !== undefined && { budget }),
    planned: sum(parts.map((p) => p.planned)),
    actual,
    toGo: expected - actual,
    expected,
    ...(budget !== undefined && { left: budget - expected }),
    unknown: parts.filter((p) => p.expected === undefined).map((p) => p.part.name),
    saved,
    savedShare: saved > 0 ? saved / (expected + saved) : 0,
    ...(placed.length > 0 && { balance: centerOfGravity({ parts: placed }) }),
    notPlaced: anyPlaced ? missing.map((p) => p.part.name) : [],
  };
}
