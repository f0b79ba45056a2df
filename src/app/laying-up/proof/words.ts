import { show } from '#app/state/show.ts';
import type { GaveWay } from '#shared/record/proof.ts';
import type { Setup } from './setup.ts';

export const letters = ['A', 'B', 'C'] as const;

export const gaveWayWords: Record<GaveWay, string> = {
  crackled: 'It crackled',
  dented: 'It dented',
  broke: 'It broke',
};

export const heldWords = {
  rests: 'Two rests',
  clamp0: 'Clamped at end 0',
  clamp1: 'Clamped at the far end',
} as const;

export const at = (station: number) => show(station, 'length', 0);

/** 'On rests at 50 and 2050 mm' */
export function layWords({ held, from, to }: Pick<Setup, 'held' | 'from' | 'to'>): string {
  if (held === 'rests') return `On rests at ${at(from)} and ${at(to)}`;
  return held === 'clamp0' ? `Clamped up to ${at(from)}` : `Clamped from ${at(to)} on`;
}

/** 'down' and 'up' are said: over a rest the tube may rise. */
export function wayWords(deflection: number, digits?: number): string {
  return `${show(Math.abs(deflection), 'dial', digits)} ${deflection < 0 ? 'up' : 'down'}`;
}

export const phaseWords = {
  before: 'Before the weight',
  under: 'Under the weight',
  after: 'Weight off again',
} as const;
