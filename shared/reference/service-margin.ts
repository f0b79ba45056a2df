/** A tube's glass transition has to stay this far above its hottest in service, K (common practice, no source). */
export const serviceMargin = 15;

/** A dark tube in the sun (common practice, no source), K */
export const darkInSun = 348.15;
