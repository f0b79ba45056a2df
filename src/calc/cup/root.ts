/**
 * Where a falling function crosses 0, by the Illinois form of regula falsi. `low` and `high` only have to be
 * near: they are moved apart until they hold it between them.
 */
export function crossing(
  f: (x: number) => number,
  { low, high, within }: { low: number; high: number; within: number },
): number {
  let [a, b] = [low, high];
  let [atA, atB] = [f(a), f(b)];
  for (let i = 0; i < 20 && atA < 0; i++) {
    a -= high - low;
    atA = f(a);
  }
  for (let i = 0; i < 20 && atB > 0; i++) {
    b += high - low;
    atB = f(b);
  }
  for (let i = 0, side = 0; i < 60 && b - a > within; i++) {
    const x = (a * atB - b * atA) / (atB - atA);
    const atX = f(x);
    if (Math.abs(atX) < within) return x;
    if (atX > 0) {
      [a, atA] = [x, atX];
      if (side === 1) atB /= 2;
      side = 1;
    } else {
      [b, atB] = [x, atX];
      if (side === -1) atA /= 2;
      side = -1;
    }
  }
  return (a + b) / 2;
}
