import { describe, expect, it } from 'vitest';
import { fiberVolumeByThickness, innerDiameter, wallsMeasured } from '#app/made/results/by-thickness.ts';
import { starterCloths } from '#shared/reference/starter-cloths.ts';
import { planRevision, upperMast as tapered } from '../browser/support/walled.ts';
import { buildOf } from './shop-of.ts';
import { carbon } from './wall-of.ts';

// 4 plies where it is thick, 2 at the tip, with 15 mm of lap; 44 to 30 mm of mandrel in 1.8 m, 0.1 mm of release on it.
const header = {
  plan: planRevision('upper-mast', tapered),
  cloth: starterCloths[carbon],
  mandrelDiameter: 0.044,
  tubeLength: 1.8,
  plies: 4,
};

/** A tube around as it would be with so much fiber in so many turns, worked out by hand. */
const around = (mandrel: number, turns: number, fiberVolume: number) =>
  Math.PI * (mandrel + 0.0001 + (2 * turns * 0.193) / (1790 * fiberVolume));

describe('the wall of a tube whose plan was drawn', () => {
  const state = buildOf(
    [
      [0.3, around(0.044 - (0.014 * 0.3) / 1.8, 4 + 0.015 / (Math.PI * 0.044), 0.42)],
      [1.8, around(0.03, 2 + 0.015 / (Math.PI * 0.031), 0.42)],
    ].map(([station = 0, value = 0]) => ({
      minute: 1,
      kind: 'measurement',
      what: 'circumference',
      station,
      value,
    })),
    header,
  );

  it('is told from the mandrel and the plies at the very station, not from those of end 0', () => {
    const walls = wallsMeasured(state);
    expect(walls.map((w) => Number((w.fiberVolume ?? 0).toFixed(2)))).toEqual([0.42, 0.42]);
    expect(fiberVolumeByThickness(walls)).toBeCloseTo(0.42, 2);
    expect(innerDiameter(state, 1.8)).toBeCloseTo(0.0301, 6);
  });
});
