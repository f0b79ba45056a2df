import { computed, signal } from '@preact/signals';
import * as z from 'zod/mini';
import { type Made, madeOfAll } from '#app/made/learned/made-facts.ts';
import type { AllSummaries } from '#app/state/all-summaries.ts';
import { theStore } from '#app/state/shop.ts';

const key = 'compared';
const shape = z.array(z.string());

const ids = signal<readonly string[] | undefined>(undefined);

/** Which builds are laid side by side, in the order they were chosen. It stays on this phone. */
export const chosen = computed(() => ids.value ?? []);

/** Whether the choice of last time is there. */
export const chosenIsThere = computed(() => ids.value !== undefined);

export async function loadChosen(): Promise<void> {
  if (ids.value !== undefined) return;
  const kept = z.safeParse(shape, await theStore().phoneValue(key));
  ids.value ??= kept.success ? kept.data : [];
}

export function choose(builds: readonly string[]): void {
  ids.value = builds;
  // Chosen again in a moment, if this phone cannot keep it.
  theStore()
    .setPhoneValue(key, [...builds])
    .catch(() => {});
}

export function toggle(build: string): void {
  choose(chosen.value.includes(build) ? chosen.value.filter((b) => b !== build) : [...chosen.value, build]);
}

/** The chosen builds that are on this phone, oldest first, as they were made. */
export function chosenOf(all: AllSummaries): Made[] {
  const wanted = new Set(chosen.value);
  const builds = all.builds.filter((b) => wanted.has(b.subject)).reverse();
  return madeOfAll({ builds, ovens: all.ovens });
}
