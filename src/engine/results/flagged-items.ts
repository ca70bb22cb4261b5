import type { Outlier } from "../gaps";
import { countedCm, type Tester } from "../pattern";
import type { FlaggedItem } from "./call-results-schema";

type ReportPart = FlaggedItem["part"];

interface ItemAddress {
  readonly part: ReportPart;
  readonly position: number;
}

const PARTS = { swatches: "swatch", readings: "reading", yarn: "yarn" } as const;

/**
 * Every number of the reports that the engine flags or a person has decided on.
 *
 * @param testers as reported, with people's decisions alone.
 * @param suspects of `gaps`.
 * @returns those that do not count first, in each group tester by tester in the call's order.
 */
export function flaggedItems(testers: readonly Tester[], suspects: readonly Outlier[]): FlaggedItem[] {
  const items = testers.flatMap((tester) =>
    (["readings", "swatches", "yarn"] as const).flatMap((part) =>
      tester[part].flatMap((_item, position) => flaggedItem(tester, { part, position }, suspects) ?? []),
    ),
  );
  return items.toSorted((left, right) => Number(left.counts) - Number(right.counts));
}

function flaggedItem(tester: Tester, address: ItemAddress, suspects: readonly Outlier[]): FlaggedItem | null {
  const item = itemAt(tester, address);
  if (item === null) return null;
  const suspect = suspectAt(suspects, tester, address);
  if (suspect === null && item.decision === null) return null;
  return {
    ...{ tester: tester.id, size: tester.size, ...address },
    ...{ of: item.of, suspect, decision: item.decision, value: item.value },
    counts: item.decision === null ? suspect?.setAside !== true : item.decision !== "set-aside",
  };
}

/** The outlier that the engine reports for an item, null if there is none. */
export function suspectAt(suspects: readonly Outlier[], tester: Tester, at: ItemAddress): Outlier | null {
  const item = itemAt(tester, at);
  const found = suspects.find(
    (suspect) =>
      suspect.tester === tester.id &&
      suspect.what === PARTS[at.part] &&
      suspect.id === item?.of &&
      item.numbers.includes(suspect.value),
  );
  return found ?? null;
}

interface Item extends Pick<FlaggedItem, "of" | "decision" | "value"> {
  /** The values by which an outlier may refer to it. */
  readonly numbers: readonly number[];
}

function itemAt(tester: Tester, { part, position }: ItemAddress): Item | null {
  switch (part) {
    case "readings": {
      const reading = tester.readings[position];
      if (reading === undefined) return null;
      const { measurement: of, cm, decision = null } = reading;
      return { of, decision, value: { cm }, numbers: [countedCm(reading)] };
    }
    case "swatches": {
      const swatch = tester.swatches[position];
      if (swatch === undefined) return null;
      const { fabric: of, decision = null, stitches, rows, acrossCm } = swatch;
      return { of, decision, value: { swatch: { ...swatch } }, numbers: [stitches, rows, acrossCm] };
    }
    case "yarn": {
      const yarn = tester.yarn[position];
      if (yarn === undefined) return null;
      const { yarn: of, grams, decision = null } = yarn;
      return { of, decision, value: { grams }, numbers: [grams] };
    }
  }
}
