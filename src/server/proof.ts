declare const proved: unique symbol;

/** Marks a value that only an `access.ts` creates: it proves that access was checked. */
export interface Proof<Of extends string> {
  readonly [proved]: Of;
}
