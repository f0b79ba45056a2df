import type { Logged } from '#app/curing/oven/merged.ts';
import type { Tube } from '#app/curing/oven/oven-cure.ts';
import type { OvenResults } from '#app/curing/oven/oven-results.ts';
import type { Reading } from '#calc';
import type { EntryOf } from '#shared/record/entry.ts';
import type { LoggerColumn, LoggerDialect, LoggerRepairs } from '#shared/record/logger-file.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import type { Fault } from './fault.ts';
import type { Choices, Span } from './faults.ts';
import type { Looked } from './look.ts';
import type { Known } from './open-file.ts';
import type { Clocked } from './time-column.ts';

/** What is to be made of the file that was looked at last. */
export interface Trial {
  dialect: LoggerDialect;
  columns: LoggerColumn[];
  clocked: Clocked;
  span: Span;
  choices: Choices;
}

export interface TriedSeries {
  column: number;
  channel: string;
  readings: number;
  /** K */
  highest?: number;
  /** As many as a small picture shows, in s from the lighting of the oven. */
  picture: Reading[];
}

export interface Tried {
  faults: Fault[];
  repairs: LoggerRepairs;
  series: TriedSeries[];
  /** When its first row was, before anything was put right, ms */
  first?: number;
  /** First and last reading that is taken, ms; absent when none is. */
  from?: number;
  until?: number;
  /** Usual time between rows, s */
  step: number;
  rows: number;
}

export interface LoggedFile {
  bytes: ArrayBuffer;
  entry: EntryOf<'loggerFile'>;
}

/** What came of an oven load with files of loggers: pictures of its series, and all of its readings for the big chart. */
export interface LoggedResults {
  results: OvenResults;
  traces: Logged[];
}

export interface Asked {
  look: { asks: { bytes: ArrayBuffer; known: Known; dialect?: LoggerDialect }; gives: Looked };
  try: { asks: Trial; gives: Tried };
  results: {
    asks: { state: OvenState; tubes: Tube[]; files: LoggedFile[] };
    gives: LoggedResults;
  };
}
export type What = keyof Asked;
export type Ask = { [W in What]: { id: number; what: W } & Asked[W]['asks'] }[What];
export type Answer = { id: number } & ({ gives: Asked[What]['gives'] } | { failed: string });
