declare const proved: unique symbol;

/** Marks a value that only an `access.ts` makes: who holds one has been let in. */
export interface Proof<Of extends string> {
  readonly [proved]: Of;
}
