import type { Reading, ReadingDecision, Tester } from "./call-document";

/** The value that a person uses in the place of the typed one, cm; null where they decided otherwise or not at all. */
export function usedCm(decision: ReadingDecision | null | undefined): number | null {
  return typeof decision === "object" && decision !== null ? decision.use : null;
}

/** The length that a reading counts with, cm. */
export function countedCm({ cm, decision }: Pick<Reading, "cm" | "decision">): number {
  return usedCm(decision) ?? cm;
}

/** The tester as if every value that is used in a typed one's place had been typed, and kept by a person. */
export function withUsedValues(tester: Tester): Tester {
  if (!tester.readings.some(({ decision }) => usedCm(decision) !== null)) return tester;
  const readings = tester.readings.map((reading) =>
    usedCm(reading.decision) === null ? reading : { ...reading, cm: countedCm(reading), decision: "keep" as const },
  );
  return { ...tester, readings };
}

export function isSameDecision(one: ReadingDecision | null, other: ReadingDecision | null): boolean {
  const [used, otherUsed] = [usedCm(one), usedCm(other)];
  return used === null && otherUsed === null ? one === other : used === otherUsed;
}
