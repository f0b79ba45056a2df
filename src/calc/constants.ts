/** Molar gas constant, J/(mol K). Exact since the 2019 revision of the SI (CODATA 2018). */
export const gasConstant = 8.31446261815324;

/** 0 C in K, by definition. */
export const zeroCelsius = 273.15;
