import type { CheckName, TubeChecks } from '#calc';
import { capital, place } from './load-words.ts';

/** Above this nothing there is near to anything. */
export const idle = 9;

export const checkWords: Record<CheckName, string> = {
  'largest stress': 'largest stress',
  'Tsai-Wu': 'Tsai-Wu, all stresses',
  'wall buckling': 'wall buckling',
  ovalization: 'ovalization',
  'column buckling': 'column buckling',
};

/** What gives out first; the two ways of reckoning a ply's stress are one there, or they would take turns all along. */
export type RuledBy = Exclude<CheckName, 'largest stress' | 'Tsai-Wu'> | 'stress';

export const ruledBy = (check: CheckName): RuledBy =>
  check === 'largest stress' || check === 'Tsai-Wu' ? 'stress' : check;

export const ruledWords: Record<RuledBy, string> = {
  stress: 'stress in a ply',
  'wall buckling': 'wall buckling',
  ovalization: 'ovalization',
  'column buckling': 'column buckling',
};

/** A stretch of the tube where one check rules. */
export interface Ruling {
  from: number;
  to: number;
  /** Undefined where nothing comes near. */
  check: RuledBy | undefined;
  /** Least of the stretch, and of which case. */
  margin: number;
  of: number;
}

/** From end 0 on: which check has the least margin where. */
export function rulingsOf({ stations }: Pick<TubeChecks, 'stations'>): Ruling[] {
  const found: Ruling[] = [];
  for (const { at, of, least } of stations) {
    const check = least.margin > idle ? undefined : ruledBy(least.check);
    const last = found.at(-1);
    if (last) last.to = at;
    if (last && last.check === check) {
      if (least.margin < last.margin) [last.margin, last.of] = [least.margin, of];
      continue;
    }
    found.push({ from: at, to: at, check, margin: least.margin, of });
  }
  // Between two places at once nothing lies: a jump of the wall has no length.
  return found.filter((r) => r.to > r.from);
}

const bare = (m: number) => place(m).replace(/\s\D+$/, '');

/** 'Between 1200 and 1900 mm wall buckling rules.' */
export function rulingWords({ from, to, check }: Ruling, length: number): string {
  const all = from <= 0 && to >= length;
  if (check === undefined) {
    return all
      ? 'Nothing comes near to anything the wall bears.'
      : `Between ${bare(from)} and ${place(to)} nothing comes near to what the wall bears.`;
  }
  const what = ruledWords[check];
  return all ? `${capital(what)} rules all along.` : `Between ${bare(from)} and ${place(to)} ${what} rules.`;
}

/** '+0.42', '−0.15', 'over 99' */
export function marginWords(margin: number): string {
  if (margin > 99) return 'over 99';
  const said = Math.abs(margin).toFixed(2);
  // Rounded up to nothing left, a margin below 0 would look as if it held.
  if (margin < 0) return `−${said === '0.00' ? '0.01' : said}`;
  return `+${said}`;
}

/** The least of all: of the stations, or of the tube as a column. */
export interface Least {
  check: CheckName;
  margin: number;
  /** Which case */
  of: number;
  /** m; undefined for the tube as a whole */
  at: number | undefined;
}

export function leastOf({ stations, cases }: Pick<TubeChecks, 'stations' | 'cases'>): Least | undefined {
  const all: Least[] = [
    ...stations.map(({ at, of, least }) => ({ ...least, of, at })),
    ...cases.map(({ column }, of) => ({ ...column, of, at: undefined })),
  ];
  return all.reduce<Least | undefined>((a, b) => (a && a.margin <= b.margin ? a : b), undefined);
}

/** Where the margin is below 0, from end 0 on. */
export function failingOf(
  stations: readonly { at: number; least: { margin: number } }[],
): { from: number; to: number }[] {
  const found: { from: number; to: number }[] = [];
  let open = false;
  for (const { at, least } of stations) {
    const fails = least.margin < 0;
    const last = found.at(-1);
    if (fails && open && last) last.to = at;
    else if (fails) found.push({ from: at, to: at });
    open = fails;
  }
  return found;
}
