import { listOf, numberIn, positive } from '../check.ts';
import { type TubeChecks, tubeChecks } from './tube-checks.ts';
import type { WallSection } from './types.ts';
import { wallSection } from './wall-section.ts';
import { cuttable } from './wanted-shape.ts';
import type { Ruling, WantedInput, WantedPlies } from './wanted-types.ts';

/** What a number of plies at each station comes to. */
type State = { checks: TubeChecks; deflection: number; column: number };

/** What the search asks again and again; sections are made once for each station and number of plies. */
export function searchOf(input: WantedInput) {
  const at = listOf('stations', input.stations, 2).map((station, k) =>
    numberIn(station, 'at', 'm', { from: -1000, to: 1000 }, `stations[${k}].`),
  );
  listOf('always', input.always, 0);
  listOf('ply', input.ply, 1);
  const least = wholeIn(input, 'least', 1, 60);
  const most = wholeIn(input, 'most', least, 60);
  const dropLength = positive(input, 'dropLength', 'm');
  const limit =
    input.deflectionLimit === undefined ? Number.POSITIVE_INFINITY : positive(input, 'deflectionLimit', 'm');
  const made = new Map<string, WallSection>();
  const sectionAt = (i: number, plies: number): WallSection => {
    const { innerDiameter = Number.NaN, inside = [], outside = [] } = input.stations[i] ?? {};
    // Stations that are alike share their sections; one with plies of its own has none to share.
    const own = inside.length > 0 || outside.length > 0;
    const key = own ? `at ${i} ${plies}` : `${innerDiameter} ${plies}`;
    const known = made.get(key);
    if (known) return known;
    const added = Array.from({ length: plies }, () => input.ply).flat();
    const section = wallSection({
      innerDiameter,
      plies: [...input.always, ...inside, ...added, ...outside],
    });
    made.set(key, section);
    return section;
  };
  const look = (plies: readonly number[]): State => {
    const stations = at.map((place, i) => ({ at: place, section: sectionAt(i, plies[i] ?? least) }));
    const { supports, cases, safetyFactor, freeLength } = input;
    const checks = tubeChecks({ stations, supports, cases, safetyFactor, freeLength });
    const far = checks.cases.map(({ solution }) => Math.max(...solution.deflection.map(Math.abs)));
    const column = Math.min(...checks.cases.map((one) => one.column.margin));
    return { checks, deflection: Math.max(...far), column };
  };
  const holds = (state: State) =>
    state.column >= 0 && state.deflection <= limit && state.checks.stations.every((s) => s.least.margin >= 0);
  const massOf = (plies: readonly number[]) => {
    let mass: number | undefined = 0;
    for (let i = 1; i < at.length; i += 1) {
      const [a, b] = [sectionAt(i - 1, plies[i - 1] ?? 0), sectionAt(i, plies[i] ?? 0)];
      if (a.massPerLength === undefined || b.massPerLength === undefined) return undefined;
      mass += ((a.massPerLength + b.massPerLength) / 2) * ((at[i] ?? 0) - (at[i - 1] ?? 0));
    }
    return mass;
  };
  return {
    at,
    least,
    most,
    dropLength,
    onePeak: input.onePeak === true,
    look,
    lacking: (state: State): Ruling | undefined => {
      if (state.column < 0) return 'column buckling';
      return state.deflection > limit ? 'deflection' : undefined;
    },
    /** The station where a ply more helps most for what it weighs. */
    bestFor: (plies: readonly number[], state: State): number | undefined => {
      let [best, most1] = [undefined as number | undefined, 0];
      for (let i = 0; i < plies.length; i += 1) {
        if ((plies[i] ?? 0) >= most) continue;
        const more = plies.map((n, k) => (k === i ? n + 1 : n));
        const then = look(more);
        const gain = state.column < 0 ? then.column - state.column : state.deflection - then.deflection;
        const long = (at[i + 1] ?? at[i] ?? 0) - (at[i - 1] ?? at[i] ?? 0);
        if (gain / long > most1) [best, most1] = [i, gain / long];
      }
      return best;
    },
    /** Takes a ply off wherever all still holds and the shape can still be cut. */
    trimmed: (plies: number[], rules: Ruling[], state: State): State => {
      let now = state;
      if (!holds(now)) return now;
      for (let i = plies.length - 1; i >= 0; i -= 1) {
        while ((plies[i] ?? 0) > least) {
          const fewer = plies.map((n, k) => (k === i ? n - 1 : n));
          if (cuttable(at, [...fewer], dropLength, input.onePeak).some((n, k) => n !== fewer[k])) break;
          const then = look(fewer);
          if (!holds(then)) break;
          plies[i] = (plies[i] ?? 0) - 1;
          if (plies[i] === least) rules[i] = 'least';
          now = then;
        }
      }
      return now;
    },
    told: (plies: readonly number[], rules: readonly Ruling[], state: State): WantedPlies => ({
      stations: at.map((place, i) => ({
        at: place,
        plies: plies[i] ?? 0,
        rules: rules[i] ?? 'least',
        margin: state.checks.stations[i]?.least.margin ?? 0,
        check: state.checks.stations[i]?.least.check ?? 'wall buckling',
      })),
      met: holds(state),
      mass: massOf(plies),
      constantMass: massOf(plies.map(() => Math.max(...plies))),
      deflection: state.deflection,
      checks: state.checks,
    }),
  };
}

function wholeIn<Field extends 'least' | 'most'>(
  input: { readonly [key in Field]: number },
  field: Field,
  from: number,
  to: number,
): number {
  const value = numberIn(input, field, 'plies', { from, to });
  if (Number.isInteger(value)) return value;
  throw new RangeError(`${field} must be a whole number of plies, got ${value}`);
}
