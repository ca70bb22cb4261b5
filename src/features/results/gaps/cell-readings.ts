import type { TesterResults } from "@/engine/results";
import type { PageOfList } from "@/ui/page-number";
import { madeDecision, type MadeDecision, type MadeDecisions } from "../mistakes/decision-copy";

/** One reading of a cell and who sent it. */
export type CellReading = TesterResults["readings"][number] &
  Pick<TesterResults, "tester" | "driftAcross" | "driftAlong"> & {
    readonly name: string;
    /** Null where nobody decided on it. */
    readonly made: MadeDecision | null;
  };

/** All readings of one measurement, counted or not, in the order of the testers that are given. */
export function cellReadings(
  testers: readonly (Pick<TesterResults, "tester" | "driftAcross" | "driftAlong" | "readings"> & {
    readonly name: string;
  })[],
  { measurement, decisions }: { readonly measurement: string; readonly decisions: MadeDecisions },
): CellReading[] {
  return testers.flatMap(({ readings, ...tester }) =>
    readings
      .filter(({ step }) => step.measurement === measurement)
      .map((reading) => ({
        ...tester,
        ...reading,
        made: madeDecision(decisions, { ...reading, tester: tester.tester, part: "readings" }),
      })),
  );
}

/** What an open cell shows: the readings of one page of the size's testers. */
export interface OpenedCell {
  readonly readings: readonly CellReading[];
  readonly list: PageOfList;
}
