import type { GapsOutput, Suspect } from "@/engine/gaps";
import type { CallDocument, Decision, Tester } from "@/engine/pattern";
import type { ReportPart } from "@/features/reports/schema";

/** Where an item stands in its tester's report. */
export interface ItemAddress {
  /** The tester's id in the document. */
  readonly tester: string;
  readonly part: ReportPart;
  readonly position: number;
}

/** An item that the engine doubts or a person has decided on. */
export interface DoubtfulItem extends ItemAddress {
  readonly size: string;
  /** Id of the measurement, the fabric or the yarn. */
  readonly of: string;
  /** What the engine doubts of it, null where only a person does. */
  readonly suspect: Suspect | null;
  readonly decision: Decision | null;
  readonly counts: boolean;
}

const PARTS = { swatches: "swatch", readings: "reading", yarn: "yarn" } as const;

/** All doubtful items of a call, tester by tester in the call's order; those that do not count come first. */
export function doubtfulItems({ testers }: CallDocument, { suspects }: Pick<GapsOutput, "suspects">): DoubtfulItem[] {
  const items = testers.flatMap((tester) =>
    (["readings", "swatches", "yarn"] as const).flatMap((part) =>
      tester[part].flatMap((_item, position) => doubtful({ tester, part, position, suspects }) ?? []),
    ),
  );
  return items.toSorted((left, right) => Number(left.counts) - Number(right.counts));
}

function doubtful(given: {
  tester: Tester;
  part: ReportPart;
  position: number;
  suspects: readonly Suspect[];
}): DoubtfulItem | null {
  const { tester, part, position, suspects } = given;
  const decision = tester[part][position]?.decision ?? null;
  const suspect = suspectAt(suspects, tester, { part, position });
  if (suspect === null && decision === null) return null;
  return {
    ...{ tester: tester.id, size: tester.size, part, position, of: idAt(tester, { part, position }) },
    ...{ suspect, decision },
    counts: decision === null ? suspect?.setAside !== true : decision === "keep",
  };
}

/** What the engine doubts of an item, null where nothing. */
export function suspectAt(
  suspects: readonly Suspect[],
  tester: Tester,
  { part, position }: Pick<ItemAddress, "part" | "position">,
): Suspect | null {
  const id = idAt(tester, { part, position });
  const found = suspects.find(
    (suspect) =>
      suspect.tester === tester.id &&
      suspect.what === PARTS[part] &&
      suspect.id === id &&
      valuesAt(tester, { part, position }).includes(suspect.value),
  );
  return found ?? null;
}

function idAt(tester: Tester, { part, position }: Pick<ItemAddress, "part" | "position">): string {
  switch (part) {
    case "readings":
      return tester.readings[position]?.measurement ?? "";
    case "swatches":
      return tester.swatches[position]?.fabric ?? "";
    case "yarn":
      return tester.yarn[position]?.yarn ?? "";
  }
}

/** The numbers of an item by which the engine may name it. */
function valuesAt(tester: Tester, { part, position }: Pick<ItemAddress, "part" | "position">): number[] {
  const swatch = tester.swatches[position];
  switch (part) {
    case "readings":
      return [tester.readings[position]?.cm ?? Number.NaN];
    case "swatches":
      return swatch ? [swatch.stitches, swatch.rows, swatch.acrossCm] : [];
    case "yarn":
      return [tester.yarn[position]?.grams ?? Number.NaN];
  }
}
