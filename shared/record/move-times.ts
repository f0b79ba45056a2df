const times = ['happenedAt', 'recordedAt', 'startedAt', 'addedAt'];
/** Days that stand in a lot itself. */
const ofLot = ['receivedAt', 'openedAt', 'expiresAt'];
/** When a logger's count began, and the stretch that its file tells of. */
const ofFile = ['startsAt', 'from', 'until'];

/**
 * A record as if everything in it had happened `by` ms later, lived in another zone (minutes east of UTC). For the demo
 * shop only: a builder's own records are never moved. A time of 0 is nobody's, as on the starter shelf, and stays:
 * moved, the same starter would come in twice with two contents.
 */
export function moveTimes<R extends object>(record: R, by: number, zone: number): R {
  // In an entry 'at' is a place along the tube: moved, a weight would hang a million kilometers off.
  const isEntry = 'record' in record && record.record === 'entry';
  const moved = shifted(record, isEntry ? times : [...times, 'at'], by);
  if ('zone' in moved) moved.zone = zone;
  const { plan } = moved;
  if (isObject(plan)) moved.plan = moveTimes(plan, by, zone);
  if (moved.type === 'lot' && isObject(moved.body)) moved.body = shifted(moved.body, ofLot, by);
  if (moved.kind !== 'loggerFile') return moved as R;
  const { repairs } = moved;
  return {
    ...shifted(moved, ofFile, by),
    clockZone: zone,
    ...(isObject(repairs) && { repairs: shifted(repairs, ofFile, by) }),
  } as R;
}

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null;

function shifted(record: object, fields: readonly string[], by: number): Record<string, unknown> {
  const moved: Record<string, unknown> = Object.fromEntries(Object.entries(record));
  for (const field of fields) {
    const ms = moved[field];
    if (typeof ms === 'number' && ms > 0) moved[field] = ms + by;
  }
  return moved;
}
