import { type Signal, signal } from '@preact/signals';
import * as z from 'zod/mini';
import type { EntryDraft } from '#shared/record/entry.ts';
import type { GaveWay } from '#shared/record/proof.ts';
import { heldRecord, type Setup } from './setup.ts';

export const phases = ['before', 'under', 'after'] as const;
export type Phase = (typeof phases)[number];

const reading = z.object({ si: z.number(), typed: z.string() });

const running = z.object({
  test: z.string(),
  setup: z.object({
    held: z.enum(['rests', 'clamp0', 'clamp1']),
    from: z.number(),
    to: z.number(),
    hangAt: z.number(),
    mass: z.number(),
    dials: z.array(z.number()),
  }),
  /** m and as typed, of each dial in its order */
  before: z.array(reading),
  under: z.array(reading),
  after: z.array(reading),
});
/** A test with its weight on or about to be: what the dials read so far. */
export type Running = z.infer<typeof running>;

const prefix = 'tubewright-proof:';
const kept = new Map<string, Signal<Running | undefined>>();

function stored(build: string): Running | undefined {
  try {
    return running.parse(JSON.parse(localStorage.getItem(prefix + build) ?? 'null'));
  } catch {
    return undefined;
  }
}

/** The test under way on a build. It outlives the app: the weight hangs on whatever the phone does. */
export function runningOf(build: string): Signal<Running | undefined> {
  const known = kept.get(build) ?? signal(stored(build));
  kept.set(build, known);
  return known;
}

export function setRunning(build: string, next: Running | undefined): void {
  runningOf(build).value = next;
  try {
    if (next) localStorage.setItem(prefix + build, JSON.stringify(next));
    else localStorage.removeItem(prefix + build);
  } catch {
    // Without localStorage a killed app loses what the dials read so far, and nothing that was recorded.
  }
}

export const begun = (test: string, setup: Setup): Running => ({
  test,
  setup: { ...setup, dials: [...setup.dials].sort((a, b) => a - b) },
  before: [],
  under: [],
  after: [],
});

/** What is to be read next; nothing once every dial was read three times. */
export function nextReading(now: Running): { phase: Phase; dial: number; at: number } | undefined {
  for (const phase of phases) {
    const dial = now[phase].length;
    const at = now.setup.dials[dial];
    if (at !== undefined) return { phase, dial, at };
  }
  return undefined;
}

export function withReading(now: Running, phase: Phase, si: number, typed: string): Running {
  return { ...now, [phase]: [...now[phase], { si, typed }] };
}

/** Without the reading that was typed last. */
export function withoutLast(now: Running): Running {
  const phase = [...phases].reverse().find((p) => now[p].length > 0);
  return phase ? { ...now, [phase]: now[phase].slice(0, -1) } : now;
}

/** What the plan says of the tube in this test, where it says anything. */
export interface Expecting {
  each: (at: number) => number | undefined;
  modulus: number | undefined;
}

const near = (meters: number) => Math.round(meters * 1e9) / 1e9;

export interface HowItGave {
  how: GaveWay;
  /** m from end 0, and as typed; absent where nobody saw it */
  place?: { si: number; typed: string };
}

/** How a test ended that the tube did not bear. */
export function gaveWayDraft(build: string, { test, setup }: Running, { how, place }: HowItGave): EntryDraft {
  return {
    kind: 'gaveWay',
    subject: build,
    how,
    mass: setup.mass,
    at: setup.hangAt,
    test,
    held: heldRecord(setup),
    ...(place && { place: place.si, typed: { place: place.typed } }),
  };
}

/**
 * One entry for each dial. Which way a dial counts is its own affair: what moved under the weight went the way that
 * is expected, and what stayed of it is counted the same way.
 */
export function proofDrafts(build: string, now: Running, { each, modulus }: Expecting): EntryDraft[] {
  const { test, setup } = now;
  return setup.dials.flatMap((station, i): EntryDraft[] => {
    const [before, under, after] = [now.before[i], now.under[i], now.after[i]];
    if (!before || !under) return [];
    const expected = each(station);
    const sign = (expected ?? 0) < 0 ? -1 : 1;
    const way = under.si < before.si ? -1 : 1;
    const moved = near(Math.abs(under.si - before.si)) * sign;
    return [
      {
        kind: 'proofLoad',
        subject: build,
        at: setup.hangAt,
        mass: setup.mass,
        station,
        deflection: moved + 0,
        ...(after && { set: near((after.si - before.si) * way * sign) + 0 }),
        test,
        held: heldRecord(setup),
        ...(expected !== undefined && { expectedEach: expected }),
        ...(modulus !== undefined && { plannedModulus: modulus }),
        typed: {
          before: before.typed,
          under: under.typed,
          ...(after && { after: after.typed }),
        },
      },
    ];
  });
}
