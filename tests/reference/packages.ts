import { createRequire } from 'node:module';

const load = createRequire(import.meta.url);

/** ASHRAE's psychrometrics (PsychroLib); it ships no types. */
export const psychrolib: {
  SI: number;
  SetUnitSystem(system: number): void;
  GetTDewPointFromRelHum(celsius: number, relativeHumidity: number): number;
} = load('psychrolib');

type Derivative = (time: number, state: readonly number[]) => number[];

/** Hairer and Wanner's extrapolation integrator ODEX, a port of the Fortran. */
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
