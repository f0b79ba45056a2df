import type { ResinSystem } from '#shared/record/resin-system.ts';

/** A resin with its hardener, which many names carry already. */
export function resinWords({ name, hardener }: Pick<ResinSystem, 'name' | 'hardener'>): string {
  return name.toLowerCase().includes(hardener.toLowerCase()) ? name : `${name}, ${hardener}`;
}
