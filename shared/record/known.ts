/**
 * The fields we know, of a schema that lets unknown ones through. Stored records keep fields of newer versions,
 * but code that names a field must name one that exists: the index signature would hide every typing slip.
 */
export type Known<T> = T extends readonly (infer U)[]
  ? Known<U>[]
  : T extends object
    ? string extends keyof T
      ? unknown extends T[string & keyof T]
        ? { [K in keyof T as string extends K ? never : K]: Known<T[K]> }
        : T
      : { [K in keyof T]: Known<T[K]> }
    : T;
