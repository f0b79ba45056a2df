/**
 * Raises plies until no drop is steeper than one ply in so many meters; with `onePeak` until they only go down from
 * the thickest place, which is a shape that one cut makes.
 *
 * @returns in place
 */
export function cuttable(
  at: readonly number[],
  plies: number[],
  dropLength: number,
  onePeak: boolean,
): number[] {
  const allowed = (i: number) => Math.floor(Math.abs((at[i + 1] ?? 0) - (at[i] ?? 0)) / dropLength + 1e-9);
  const last = plies.length - 1;
  const raise = (i: number, to: number) => {
    plies[i] = Math.max(plies[i] ?? 0, to);
  };
  for (let i = 1; i <= last; i += 1) raise(i, (plies[i - 1] ?? 0) - allowed(i - 1));
  for (let i = last - 1; i >= 0; i -= 1) raise(i, (plies[i + 1] ?? 0) - allowed(i));
  if (!onePeak) return plies;
  const peak = plies.indexOf(Math.max(...plies));
  for (let i = 1; i < peak; i += 1) raise(i, plies[i - 1] ?? 0);
  for (let i = last - 1; i > peak; i -= 1) raise(i, plies[i + 1] ?? 0);
  return plies;
}
