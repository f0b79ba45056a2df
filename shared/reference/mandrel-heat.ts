import type { Mandrel } from '#shared/record/mandrel.ts';

/** What it takes to warm a mandrel: kg/m3 and J/(kg K). */
export interface HeatOfMaterial {
  density: number;
  specificHeat: number;
}

/**
 * By what it is made of; foam keeps heat out rather than taking it up, so nothing can be reckoned for it.
 * Aluminum 6061 and plain carbon steel: handbook values, from memory. Composite: common practice, no source.
 */
export const mandrelHeat: Partial<Record<Mandrel['material'], HeatOfMaterial>> = {
  aluminum: { density: 2700, specificHeat: 900 },
  steel: { density: 7850, specificHeat: 475 },
  composite: { density: 1600, specificHeat: 1000 },
};
