import { createRequire } from 'node:module';

const load = createRequire(import.meta.url);

/** Source: ASHRAE Handbook, Fundamentals, psychrometrics, as PsychroLib has it; it ships no types. */
export const psychrolib: {
  SI: number;
  SetUnitSystem(system: number): void;
  GetTDewPointFromRelHum(celsius: number, relativeHumidity: number): number;
} = load('psychrolib');

type Derivative = (time: number, state: readonly number[]) => number[];

/** Source: ODEX of Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I; a port of the Fortran. */
export const odex: {
  Solver: new (
    size: number,
  ) => {
    relativeTolerance: number;
    absoluteTolerance: number;
    maxStepSize: number;
    solve(derivative: Derivative, from: number, start: number[], to: number): { y: number[] };
  };
} = load('odex');
