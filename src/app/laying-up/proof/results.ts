import { effectiveModulus } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import type { EntryOf } from '#shared/record/entry.ts';

/** Measured against expected, m; at one place under one weight */
export interface ProofPoint {
  expected: number;
  measured: number;
}

export interface ProofReading {
  root: string;
  entry: EntryOf<'proofLoad'>;
  /** m; absent where the wall of the plan does not say it */
  expected: number | undefined;
}

/** One weight hung once, and all that was read under it. */
export interface ProofTest {
  key: string;
  mass: number;
  at: number;
  readings: ProofReading[];
}

export interface Stiffness {
  /** Stiffness over what was planned */
  factor: number;
  /** Pa; absent where no modulus was planned */
  modulus: number | undefined;
  planned: number | undefined;
  /** How far the places differ from one factor, as a share of the largest deflection */
  scatter: number;
}

export const expectedOf = ({ expectedEach, mass }: EntryOf<'proofLoad'>): number | undefined =>
  expectedEach === undefined ? undefined : expectedEach * mass;

/** Newest last, as they happened. */
export function proofTests({ proofLoads }: BuildState): ProofTest[] {
  const tests = new Map<string, ProofTest>();
  for (const { entry, root } of proofLoads) {
    const key = entry.test ?? root;
    const test = tests.get(key) ?? { key, mass: entry.mass, at: entry.at, readings: [] };
    test.readings.push({ root, entry, expected: expectedOf(entry) });
    tests.set(key, test);
  }
  return [...tests.values()];
}

export const pointsOf = (readings: readonly EntryOf<'proofLoad'>[]): ProofPoint[] =>
  readings.flatMap((entry) => {
    const expected = expectedOf(entry);
    // Of what is foretold not to move, or past all measure, nothing can be learned.
    const says = expected !== undefined && expected !== 0 && Math.abs(expected) < 100;
    return says ? [{ expected, measured: entry.deflection }] : [];
  });

/** Stiffness over plan, from points; undefined where they say nothing of it, as when it moved the other way. */
export function factorOf(points: readonly ProofPoint[]): { factor: number; scatter: number } | undefined {
  if (points.length === 0) return undefined;
  try {
    return effectiveModulus({ points, plannedModulus: 1 });
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

export function stiffnessOf({ readings }: ProofTest): Stiffness | undefined {
  const found = factorOf(pointsOf(readings.map((r) => r.entry)));
  if (!found) return undefined;
  const planned = readings.find((r) => r.entry.plannedModulus !== undefined)?.entry.plannedModulus;
  return { ...found, planned, modulus: planned === undefined ? undefined : planned * found.factor };
}

/** Farthest that any reading stayed down, m; undefined where none was read again. */
export function setOf({ readings }: ProofTest): number | undefined {
  const sets = readings.flatMap(({ entry }) => entry.set ?? []);
  return sets.length === 0 ? undefined : sets.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
}

/** More than this of what it bent is a set and not a slip of the dial (common practice, no source). */
export const setShare = 0.02;

export function isSet(test: ProofTest): boolean {
  const far = Math.max(...test.readings.map(({ entry }) => Math.abs(entry.deflection)));
  const set = setOf(test);
  return set !== undefined && Math.abs(set) > setShare * far;
}

/** Ring stiffness that a squeeze shows, N/m2, and its share of what was planned. */
export function ringOf({ force, length, narrower, expected }: EntryOf<'squeezeTest'>) {
  const ring = force / length / narrower;
  return { ring, factor: expected === undefined ? undefined : ring / expected };
}

export const isTested = ({ proofLoads, squeezeTests, gaveWay }: BuildState): boolean =>
  proofLoads.length + squeezeTests.length + gaveWay.length > 0;
