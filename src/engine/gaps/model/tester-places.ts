import type { TesterGaps } from "./gap-readings";

/** A tester's place in the fits: their size, and which of its blocks is theirs. */
export interface TesterPlace {
  readonly gaps: TesterGaps;
  readonly size: number;
  readonly block: number;
}

export function testerPlaces(testers: readonly TesterGaps[]): TesterPlace[] {
  const ofSize = new Map<number, number>();
  return testers.map((gaps) => {
    const block = ofSize.get(gaps.size) ?? 0;
    ofSize.set(gaps.size, block + 1);
    return { gaps, size: gaps.size, block };
  });
}
