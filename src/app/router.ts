import { computed, signal } from '@preact/signals';
import { parse } from 'regexparam';

/** Hash routes, so that the app works from any folder of any static host. */
const hash = signal(location.hash);
addEventListener('hashchange', () => {
  hash.value = location.hash;
});

/** The address inside the app: '/build/018f...' */
export const path = computed(() => hash.value.replace(/^#/, '') || '/');

export function go(to: string): void {
  if (location.hash === `#${to}`) return;
  location.hash = to;
}

/** Takes the place of the present address, so that 'back' does not return to a form that is done. */
export function goInstead(to: string): void {
  history.replaceState(null, '', `#${to}`);
  hash.value = location.hash;
}

export function back(fallback: string): void {
  if (history.length > 1) history.back();
  else goInstead(fallback);
}

export type Params = Record<string, string>;

/** The values of `:names` in a pattern, when the address fits it. */
export function matchPath(pattern: string, address: string): Params | undefined {
  const { keys, pattern: shape } = parse(pattern);
  const found = shape.exec(address);
  if (!found) return undefined;
  return Object.fromEntries(keys.map((key, i) => [key, decodeURIComponent(found[i + 1] ?? '')]));
}
