interface Kept {
  inputs: readonly unknown[];
  value: unknown;
}

const kept = new WeakMap<object, Map<string, Kept>>();

const same = (a: readonly unknown[], b: readonly unknown[]) =>
  a.length === b.length && a.every((one, i) => Object.is(one, b[i]));

/** Computes once for an owner and its inputs, and forgets with the owner. One value of each name is kept. */
export function keptBy<T>(owner: object, name: string, inputs: readonly unknown[], make: () => T): T {
  const own = kept.get(owner) ?? new Map<string, Kept>();
  kept.set(owner, own);
  const known = own.get(name);
  if (known && same(known.inputs, inputs)) return known.value as T;
  const value = make();
  own.set(name, { inputs, value });
  return value;
}
