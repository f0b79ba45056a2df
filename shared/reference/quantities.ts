/** Starter values are written in the units a data sheet uses; what is kept is SI. */
export const celsius = (degrees: number) => degrees + 273.15;
/** A rate or a step of temperature: no offset. */
export const kelvinPerMinute = (kelvin: number) => kelvin / 60;
export const minutes = (count: number) => count * 60;
export const hours = (count: number) => count * 3600;
export const grams = (mass: number) => mass / 1000;
export const millimeters = (length: number) => length / 1000;
export const gramsPerSquareMeter = (mass: number) => mass / 1000;

export const typicalNote =
  'Typical values, not a data sheet. Check them against the one that came with yours.';
