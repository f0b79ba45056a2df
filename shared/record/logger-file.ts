import * as z from 'zod/mini';
import { id, kelvin, nonNegative, positive, stamp } from './common.ts';
import type { Known } from './known.ts';

/** What the bytes of a logger's file are kept as, beside the photos; they go into every backup. */
export const loggerFileType = 'text/csv';

export const encodings = ['utf-8', 'utf-16le', 'utf-16be', 'windows-1252'] as const;
export const delimiters = [',', ';', '\t', '|'] as const;
/**
 * How a row says when it was: a date with its time of day, a time of day alone, time gone by as h:mm:ss, or a number
 * that counts from the start, from 1970 or from 1899-12-30 as spreadsheets do.
 */
export const timeForms = ['stamp', 'timeOfDay', 'elapsed', 'number', 'epoch', 'serial'] as const;
export const dateOrders = ['ymd', 'dmy', 'mdy'] as const;
export const timeUnits = ['ms', 's', 'min', 'h', 'day'] as const;
export const degrees = ['C', 'F', 'K'] as const;

const place = z.number().check(z.gte(0), z.lt(1e9));

export const loggerTime = z.lazy(() =>
  z.looseObject({
    /** Counted from 0; two when date and time of day stand apart. */
    columns: z.array(place),
    form: z.enum(timeForms),
    order: z.optional(z.enum(dateOrders)),
    unit: z.optional(z.enum(timeUnits)),
  }),
);
export type LoggerTime = Known<z.infer<typeof loggerTime>>;

/** How a logger writes its file. */
export const loggerDialect = z.lazy(() =>
  z.looseObject({
    encoding: z.enum(encodings),
    delimiter: z.enum(delimiters),
    decimal: z.enum(['.', ',']),
    /** The heads of its columns, by which the next file of the same look is known. */
    heads: z.array(z.string()),
    /** First row with readings, counted from 0. */
    firstRow: place,
    time: loggerTime,
  }),
);
export type LoggerDialect = Known<z.infer<typeof loggerDialect>>;

export const loggerColumn = z.lazy(() =>
  z.looseObject({ column: place, channel: id, unit: z.enum(degrees) }),
);
export type LoggerColumn = Known<z.infer<typeof loggerColumn>>;

/** What is left out of a file or put right in it. The file itself stays as it was; rows count from 0 at its first reading. */
export const loggerRepairs = z.lazy(() =>
  z.looseObject({
    /** From a row on, its clock is put on by so many s. */
    shifts: z.array(z.looseObject({ row: place, by: z.number() })),
    /** Rows left out, of one column or of all. */
    cuts: z.array(z.looseObject({ first: place, last: place, column: z.optional(place) })),
    /** Outside of these a value is a sensor's way of saying that it reads nothing. */
    lowest: kelvin,
    highest: kelvin,
    /** Rows with one time: the first of them is kept, or they are spread until the next time. */
    repeats: z.enum(['first', 'spread']),
    /** The middle value of each stretch of so many s stands for it. */
    smooth: z.optional(positive),
    /** Only what was read between these, ms. */
    from: z.optional(stamp),
    until: z.optional(stamp),
  }),
);
export type LoggerRepairs = Known<z.infer<typeof loggerRepairs>>;

/** What a file gave when it was read, so that lists need not read it again. */
export const loggerSeries = z.lazy(() =>
  z.looseObject({
    channel: id,
    readings: nonNegative,
    highest: z.optional(kelvin),
  }),
);
