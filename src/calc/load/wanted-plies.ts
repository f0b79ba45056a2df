import { searchOf } from './wanted-search.ts';
import { cuttable } from './wanted-shape.ts';
import type { Ruling, WantedInput, WantedPlies } from './wanted-types.ts';

/**
 * The fewest whole plies at each station that bear the loads, do not buckle and do not bend too far, as a shape that
 * can be cut.
 *
 * @param stations `at` in m, two or more in order, and what the wall is laid on there, `innerDiameter`, m; `inside` and
 *   `outside` for what lies there under and over the plies that are asked for
 * @param always plies that lie inside all along, as for `wallSection`; may be none
 * @param ply what one more ply is: one, or the two halves that `wovenPlies` gives
 * @param least plies anywhere, a whole number, at least 1
 * @param most plies anywhere, a whole number, at least `least`, at most 60
 * @param supports as for `beamLine`
 * @param cases as for `tubeChecks`
 * @param safetyFactor at least 1
 * @param freeLength m, as for `tubeChecks`
 * @param deflectionLimit farthest that any place may go aside, m; without it no limit
 * @param dropLength along the tube for each ply that ends, m, greater than 0
 * @param onePeak whether the plies must only go down from the thickest place
 * @returns see `WantedPlies`
 * @throws RangeError naming the field
 *
 * Formula: a ply more where a check fails, until none does; for deflection and column buckling where it helps most for
 * its weight; then a ply less wherever all still holds.
 *
 * @example
 * // A pole of 38 mm bore held at its foot, 50 N at 3 m, no more than 0.25 m aside. How many plies at the foot?
 * wantedPlies({
 *   stations: [0, 1, 2, 3].map((at) => ({ at, innerDiameter: 0.038 })),
 *   always: [],
 *   ply: [{ e1: 105e9, e2: 7.5e9, g12: 3e9, nu12: 0.3, angle: 0, thickness: 0.0003, density: 1500 }],
 *   least: 2,
 *   most: 20,
 *   supports: [{ kind: 'clamp', at: 0 }],
 *   cases: [{ loads: [{ kind: 'point', at: 3, force: 50 }], loadFactor: 1 }],
 *   safetyFactor: 2,
 *   freeLength: 3,
 *   deflectionLimit: 0.25,
 *   dropLength: 0.1,
 *   onePeak: true,
 * }).stations[0].plies
 * // => 3
 */
export function wantedPlies(input: WantedInput): WantedPlies {
  const search = searchOf(input);
  const plies = cuttable(
    search.at,
    search.at.map(() => search.least),
    search.dropLength,
    search.onePeak,
  );
  const rules: Ruling[] = plies.map(() => 'least');
  let state = search.look(plies);
  for (;;) {
    const before = [...plies];
    const failing = plies.map((n, i) => n < search.most && (state.checks.stations[i]?.least.margin ?? 0) < 0);
    if (failing.some((fails) => fails)) {
      failing.forEach((fails, i) => {
        if (!fails) return;
        plies[i] = (plies[i] ?? 0) + 1;
        rules[i] = state.checks.stations[i]?.least.check ?? 'least';
      });
    } else {
      const lacking = search.lacking(state);
      const i = lacking && search.bestFor(plies, state);
      if (!lacking || i === undefined) break;
      plies[i] = (plies[i] ?? 0) + 1;
      rules[i] = lacking;
    }
    const asked = [...plies];
    cuttable(search.at, plies, search.dropLength, search.onePeak);
    plies.forEach((n, i) => {
      if (n > (asked[i] ?? 0) || (n > (before[i] ?? 0) && asked[i] === before[i])) rules[i] = 'drop-off';
    });
    state = search.look(plies);
  }
  state = search.trimmed(plies, rules, state);
  return search.told(plies, rules, state);
}
