import type { PatternDocument } from "@/engine/pattern";
import { dayText } from "@/ui/day";
import { inRanges } from "@/ui/in-ranges";
import type { CorrectedSizeStanding } from "./retest-data";
import type { RetestStatus } from "./retest-status";

type Named = Pick<PatternDocument, "sizes" | "measurements">;

/** Corrected sizes of which the same is to be said. */
interface RetestGroup {
  readonly key: string;
  readonly sizes: readonly string[];
  readonly revisionNumber: number;
  readonly status: RetestStatus;
  /** `Size 2X` or `Sizes XS to M`. */
  readonly heading: string;
  readonly says: string;
}

/** Corrected sizes with what is to be said of them, in their order. */
export function retestGroups(standings: readonly CorrectedSizeStanding[], pattern: Named): RetestGroup[] {
  const together = new Map<string, CorrectedSizeStanding[]>();
  for (const standing of standings) {
    const key = `${standing.revisionNumber}. ${retestSentence(standing, pattern)}`;
    together.set(key, [...(together.get(key) ?? []), standing]);
  }
  return [...together].flatMap(([key, [first, ...others]]) => {
    if (first === undefined) return [];
    const sizes = [first, ...others].map(({ size }) => size);
    const { revisionNumber, status } = first;
    const heading = `${sizes.length === 1 ? "Size" : "Sizes"} ${sizesText(sizes, pattern)}`;
    return [{ key, sizes, revisionNumber, status, heading, says: retestSentence(first, pattern) }];
  });
}

/** Whether a corrected size has been tested again, in a sentence that begins after the size. */
function retestSentence(standing: CorrectedSizeStanding, { measurements }: Named): string {
  const { status, revisionNumber, checkedBy, checkedAt } = standing;
  const changed = measurements.filter(({ id }) => standing.measurements.includes(id)).map(({ label }) => label);
  const what = changed.length === 0 ? "" : ` (${changed.join(", ")})`;
  const corrected = `corrected in revision ${revisionNumber}${what}`;
  switch (status) {
    case "due":
      return `${corrected}, not yet re-tested.`;
    case "checked":
      return `${corrected}. Checked by ${checkedBy ?? ""}${checkedAt === null ? "" : ` on ${dayText(checkedAt)}`}, not re-tested.`;
    case "off":
      return `${corrected}, re-tested, and still different from the pattern.`;
    case "retested":
      return `${corrected} and re-tested: as planned, as far as reports show.`;
  }
}

/** The mark beside a size, in few words; null where nothing is to be marked. */
function retestMark(status: RetestStatus): string | null {
  switch (status) {
    case "due":
      return "not yet re-tested";
    case "checked":
      return "checked, not re-tested";
    case "off":
      return "re-tested, still off";
    case "retested":
      return null;
  }
}

/** Which mark counts where a size was corrected more than once. */
const GRAVEST: readonly RetestStatus[] = ["off", "due", "checked"];

/** The mark of each size that has one, by its id. */
export function retestMarks(standings: readonly Pick<CorrectedSizeStanding, "size" | "status">[]): Map<string, string> {
  const marks = new Map<string, string>();
  for (const status of GRAVEST.toReversed()) {
    const mark = retestMark(status);
    for (const { size } of standings.filter((standing) => standing.status === status))
      if (mark !== null) marks.set(size, mark);
  }
  return marks;
}

function sizesText(ids: readonly string[], { sizes }: Pick<PatternDocument, "sizes">): string {
  return inRanges(
    sizes.map(({ label }) => label),
    (index) => ids.includes(sizes[index]?.id ?? ""),
  );
}
