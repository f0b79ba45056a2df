/** Deeper than any record of ours by far; storing or printing deeper ones can overflow the stack. */
const deepest = 64;

/**
 * Why a parsed JSON value may not be stored, if so. Walks without recursion, since the value may be hostile:
 * nested too deep to store or compare, or carrying a key that turns into a prototype when it is copied.
 */
export function unsafeJson(value: unknown): 'tooDeep' | 'prototypeKey' | undefined {
  let level: unknown[] = [value];
  for (let depth = 0; level.length > 0; depth++) {
    if (depth > deepest) return 'tooDeep';
    const next: unknown[] = [];
    for (const item of level) {
      if (typeof item !== 'object' || item === null) continue;
      if (Object.hasOwn(item, '__proto__')) return 'prototypeKey';
      for (const inner of Object.values(item)) if (typeof inner === 'object') next.push(inner);
    }
    level = next;
  }
  return undefined;
}

/** One text for one content, whatever the order of the keys. */
export function canonical(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) => {
    if (typeof inner !== 'object' || inner === null || Array.isArray(inner)) return inner;
    return Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)));
  });
}
