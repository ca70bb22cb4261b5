import type { ReactNode } from "react";

/** What could be asked of a tester, by their id in the analysis. */
interface AskedOfTester {
  readonly tester: string;
  readonly measurement: string;
  readonly what: "measure-again" | "measure";
}

/** The button that asks it, or when it was asked; null where this reader cannot ask it. */
export type Asking = (asked: AskedOfTester) => ReactNode;
