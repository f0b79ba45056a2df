const times = ['happenedAt', 'recordedAt', 'startedAt', 'at'];

/**
 * A record as if everything in it had happened `by` ms later, lived in another zone (minutes east of UTC). For the demo
 * shop only: a builder's own records are never moved. A time of 0 is nobody's, as on the starter shelf, and stays:
 * moved, the same starter would come in twice with two contents.
 */
export function moveTimes<R extends object>(record: R, by: number, zone: number): R {
  const moved: Record<string, unknown> = Object.fromEntries(Object.entries(record));
  for (const field of times) {
    const ms = moved[field];
    if (typeof ms === 'number' && ms > 0) moved[field] = ms + by;
  }
  if ('zone' in moved) moved.zone = zone;
  const { plan } = moved;
  if (typeof plan === 'object' && plan !== null) moved.plan = moveTimes(plan, by, zone);
  return moved as R;
}
