/** A tube's glass transition has to stay this far above its hottest in service, K (common practice, no source). */
export const serviceMargin = 15;
