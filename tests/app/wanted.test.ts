import { describe, expect, it } from 'vitest';
import { tubeOfPlan } from '#app/planning/carry/tube-of-plan.ts';
import { laterAt, spreadOut, stretchesOf } from '#app/planning/wanted/stretches.ts';
import { withPlies } from '#app/planning/wanted/take.ts';
import {
  firstAsking,
  placesOf,
  pliesToday,
  variable,
  wantedInput,
} from '#app/planning/wanted/wanted-input.ts';
import type { Wanted } from '#app/planning/wanted/wanted-worker.ts';
import { wantedPlies } from '#calc';
import type { LoadPlan } from '#shared/record/load-plan.ts';
import { lowerMastLoads } from '../../demo/loads.ts';
import { plans } from '../../demo/plans.ts';
import { lowerMastWall, wallShelf } from '../../demo/walls.ts';

const plan = plans(Date.UTC(2026, 10, 26)).lowerMastAgain.body;
const found = tubeOfPlan(plan, wallShelf);
if (!found.ok) throw new Error('the lower mast cannot be reckoned');
const { tube } = found;
const asking = firstAsking(tube, plan.cloth);
if (!asking) throw new Error('the lower mast has no piece to vary');

const search = (loads: LoadPlan = lowerMastLoads, of = asking) => {
  const input = wantedInput(tube, loads, of);
  if (!input) throw new Error('the loads do not say enough');
  return { input, wanted: wantedPlies(input) };
};

describe('what is asked of the search', () => {
  it('varies the piece of the main cloth that runs the whole tube, in the place of its local thickening', () => {
    expect(asking).toMatchObject({ piece: 0, instead: [1] });
    // The glass ends short of the head.
    expect(variable(tube)).toEqual([0]);
  });

  it('looks at the ends and at every place that holds or bears', () => {
    const places = placesOf(2.1, lowerMastLoads);
    expect(places).toEqual(expect.arrayContaining([0, 0.55, 2.1]));
    expect([...places].sort((a, b) => a - b)).toEqual(places);
  });

  it('leaves what stays in the wall where it lies', () => {
    const { input } = search();
    const at = (place: number) => input.stations.find((s) => Math.abs(s.at - place) < 1e-9);
    // One glass ply outside as far as it goes, as warp and weft; nothing beyond it.
    expect(at(0)?.outside?.length).toBeGreaterThanOrEqual(2);
    expect(at(2.1)?.outside).toEqual([]);
    expect(at(0)?.inside).toEqual([]);
  });

  it('is nothing without a safety factor or a load factor', () => {
    const { safetyFactor: _, ...unsafe } = lowerMastLoads;
    expect(wantedInput(tube, unsafe, asking)).toBeUndefined();
    const cases = lowerMastLoads.cases.map(({ loadFactor: _l, ...one }) => one);
    expect(wantedInput(tube, { ...lowerMastLoads, cases }, asking)).toBeUndefined();
  });

  it('counts today’s plies of all that gives way', () => {
    const [foot = 0, deck = 0, head = 0] = pliesToday(tube, asking, [0.01, 0.6, 2.1]);
    expect(foot).toBeCloseTo(3, 6);
    expect(deck).toBeCloseTo(6, 6);
    expect(head).toBeCloseTo(2, 6);
  });
});

describe('the fewest plies', () => {
  const { wanted } = search();

  it('hold everywhere, thickest at the partners, and weigh less than as many throughout', () => {
    expect(wanted.met).toBe(true);
    expect(wanted.stations.every(({ margin }) => margin >= 0)).toBe(true);
    const most = Math.max(...wanted.stations.map((s) => s.plies));
    const thickest = wanted.stations.filter((s) => s.plies === most).map((s) => s.at);
    expect(Math.min(...thickest)).toBeLessThanOrEqual(0.56);
    expect(Math.max(...thickest)).toBeLessThan(0.9);
    expect(wanted.mass).toBeLessThan(wanted.constantMass ?? 0);
    expect(wanted.deflection).toBeLessThanOrEqual(0.12);
  });

  it('say what fails where even the most are too few', () => {
    const few = search(lowerMastLoads, { ...asking, most: 3 }).wanted;
    expect(few.met).toBe(false);
    expect(few.stations.find((s) => s.margin < 0)?.check).toMatch(/stress|Tsai|buckling/);
  });
});

const stationsOf = (...plies: [number, Wanted['stations'][number]['rules']][]): Pick<Wanted, 'stations'> => ({
  stations: plies.map(([n, rules], i) => ({ at: i, plies: n, rules, margin: 0, check: 'wall buckling' })),
});

describe('a wanted wall', () => {
  it('is told in runs of as many plies for the same reason, without gaps', () => {
    const runs = stretchesOf(
      stationsOf([3, 'Tsai-Wu'], [3, 'largest stress'], [2, 'wall buckling'], [2, 'least']),
    );
    expect(runs.map(({ from, to, plies }) => [from, to, plies])).toEqual([
      [0, 1.5, 3],
      [1.5, 2.5, 2],
      [2.5, 3, 2],
    ]);
  });

  it('can be spread so that a straight edge never has less than the thicker of two stations', () => {
    const plies = [2, 2, 5, 3, 3, 2];
    const spread = spreadOut(plies);
    plies.slice(1).forEach((n, i) => {
      expect(Math.min(spread[i] ?? 0, spread[i + 1] ?? 0)).toBeGreaterThanOrEqual(Math.max(n, plies[i] ?? 0));
    });
  });

  it('lets a ply end later only beside the places that are short', () => {
    expect(laterAt([0, 1, 2, 3], [3, 2, 2, 1], [0.4])).toEqual([3, 3, 2, 1]);
    expect(laterAt([0, 1, 2, 3], [1, 2, 3, 3], [1, 1.5])).toEqual([2, 3, 3, 3]);
    expect(laterAt([0, 1, 2, 3], [3, 2, 2, 1], [3])).toEqual([3, 2, 2, 2]);
  });

  it('goes into its piece as plies at stations; what gave way is gone, the rest is as it was', () => {
    const state = { wall: lowerMastWall, length: 2.1 };
    const next = withPlies(state, asking, [
      { at: 0, value: 3 },
      { at: 0.5, value: 3 },
      { at: 1, value: 3 },
      { at: 2.1, value: 2 },
    ]);
    const [skin, glass, ...others] = next.wall.pieces;
    expect(others).toEqual([]);
    expect(glass).toBe(lowerMastWall.pieces[2]);
    // What lies on the line between its neighbors needs no mark on the cloth.
    expect(skin?.shape).toEqual({
      by: 'plies',
      plies: {
        between: 'straight',
        stations: [
          { at: 0, value: 3 },
          { at: 1, value: 3 },
          { at: 2.1, value: 2 },
        ],
      },
    });
  });
});
