/** What of odex is used here; its own source, which it would be checked by, is not written for strict checks. */
export class Solver {
  constructor(dimension: number);
  relativeTolerance: number;
  absoluteTolerance: number;
  maxSteps: number;
  denseOutput: boolean;
  solve(
    slope: (x: number, y: number[]) => number[],
    from: number,
    start: readonly number[],
    to: number,
    step?: (
      count: number,
      from: number,
      to: number,
      y: number[],
      dense?: (component: number, x: number) => number,
    ) => undefined,
  ): { y: number[]; outcome: number };
}
