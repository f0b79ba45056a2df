import type { Cloth } from '#shared/record/cloth.ts';

export interface Part {
  cloth: Cloth;
  /** Dry, kg */
  mass: number;
}

/**
 * One cloth that stands for several in a tube, so that its resin comes out as theirs together: fiber density by
 * volume, areal weight as the mean over the area. One alone stays itself.
 */
export function blendedCloth(parts: readonly Part[]): Cloth | undefined {
  const used = parts.filter((p) => p.mass > 0);
  const [main] = [...used].sort((a, b) => b.mass - a.mass);
  if (!main) return undefined;
  if (used.every((p) => p.cloth === main.cloth)) return main.cloth;
  const sum = (of: (part: Part) => number) => used.reduce((total, part) => total + of(part), 0);
  const mass = sum((p) => p.mass);
  const names = [...new Set([...used].sort((a, b) => b.mass - a.mass).map((p) => p.cloth.name))];
  const fibers = new Set(used.map((p) => p.cloth.fiber));
  return {
    name: names.join(' + ').slice(0, 200),
    fiber: fibers.size === 1 ? main.cloth.fiber : 'other',
    fiberDensity: mass / sum((p) => p.mass / p.cloth.fiberDensity),
    arealWeight: mass / sum((p) => p.mass / p.cloth.arealWeight),
  };
}
