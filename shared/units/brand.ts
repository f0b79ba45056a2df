declare const unit: unique symbol;

type In<Unit extends string> = number & { readonly [unit]: Unit };

export type Kilograms = In<'kg'>;
export type Meters = In<'m'>;
export type SquareMeters = In<'m2'>;
export type Seconds = In<'s'>;
export type Kelvin = In<'K'>;
export type KelvinPerSecond = In<'K/s'>;
export type KilogramsPerSquareMeter = In<'kg/m2'>;
export type KilogramsPerCubicMeter = In<'kg/m3'>;
export type KilogramsPerSecond = In<'kg/s'>;
export type KilogramsPerMole = In<'kg/mol'>;
export type Pascals = In<'Pa'>;
export type Radians = In<'rad'>;
export type Share = In<'0..1'>;
export type EpochMilliseconds = In<'epoch ms'>;

export const kg = (n: number) => n as Kilograms;
export const m = (n: number) => n as Meters;
export const m2 = (n: number) => n as SquareMeters;
export const s = (n: number) => n as Seconds;
export const K = (n: number) => n as Kelvin;
export const kPerS = (n: number) => n as KelvinPerSecond;
export const kgPerM2 = (n: number) => n as KilogramsPerSquareMeter;
export const kgPerM3 = (n: number) => n as KilogramsPerCubicMeter;
export const kgPerS = (n: number) => n as KilogramsPerSecond;
export const kgPerMol = (n: number) => n as KilogramsPerMole;
export const pa = (n: number) => n as Pascals;
export const rad = (n: number) => n as Radians;
export const share = (n: number) => n as Share;
export const epochMs = (n: number) => n as EpochMilliseconds;
