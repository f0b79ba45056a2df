/** Minutes east of UTC of the demo's shop. */
export const shopZone = -240;

/** The moment the committed demo stands at: a Saturday in May, 3:24 PM in the shop. Loading it moves everything to now. */
export const anchor = Date.UTC(2026, 4, 16, 19, 24);

export const minute = 60_000;
export const hour = 60 * minute;
const day = 24 * hour;

/** A time of day in the shop, so many days before the one that `now` is in, if `now` is 3:24 PM. */
export function daysBack(now: number, days: number, clock: `${number}:${number}`): number {
  const [hours = 0, minutes = 0] = clock.split(':').map(Number);
  const midnight = now - 15 * hour - 24 * minute;
  return midnight - days * day + hours * hour + minutes * minute;
}
