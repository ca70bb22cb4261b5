import type { Outlier } from "@/engine/gaps";
import type { PatternDocument, Size } from "@/engine/pattern";
import type { YarnResults } from "@/engine/results";
import { publishedMetres, stitchFaults, type StitchFault } from "@/engine/yarn";
import type { LengthUnit } from "@/engine/units";
import { toMetres, yarnUnit, type YarnUnit } from "@/ui/format-yarn-length";
import type { TesterParts } from "../schema";

type Yarn = PatternDocument["yarns"][number];

/** Whether there are results for a yarn, or why not. */
type YarnState = "told" | "no pieces" | "no reports";

export interface YarnRow extends Omit<YarnResults[number]["sizes"][number], "size"> {
  readonly size: Size;
}

/** What one tester reports having used of a yarn. */
interface ReportedYarn {
  readonly tester: string;
  readonly name: string;
  /** Index of their size in the pattern. */
  readonly sizeAt: number;
  readonly metres: number;
  readonly isSetAside: boolean;
}

export interface YarnSheet {
  readonly yarn: Yarn;
  readonly state: YarnState;
  readonly rows: readonly YarnRow[];
  /** Yarn in a stitch at the stated gauge by the fabric's label, cm. */
  readonly perStitch: readonly { readonly fabric: string; readonly cm: number }[];
  /** Empty where testers are too many to be named one by one. */
  readonly reported: readonly ReportedYarn[];
  readonly suspects: readonly Outlier[];
}

/** The yarn page's content. */
export interface YarnBoard {
  readonly sheets: readonly YarnSheet[];
  readonly sizes: readonly Size[];
  readonly unit: YarnUnit;
  /** Amounts to publish are rounded up to a multiple of this many metres or yards. */
  readonly roundTo: number;
  readonly names: ReadonlyMap<string, string>;
  /** What of the garment cannot be worked, so that the amounts are those of the rest. */
  readonly faults: readonly StitchFault[];
}

interface YarnGiven {
  readonly pattern: PatternDocument;
  readonly yarn: YarnResults;
  /** None where they are too many to be named one by one. */
  readonly testers: readonly TesterParts<"yarn">[];
  /** By ids, of those whose weights are flagged. */
  readonly names: ReadonlyMap<string, string>;
}

/** How much of each yarn every size needs, beside what testers used. */
export function yarnBoard(
  { pattern, yarn: needs, testers, names }: YarnGiven,
  { unit: lengthUnit, roundTo }: { unit: LengthUnit; roundTo: number },
): YarnBoard {
  const unit = yarnUnit(lengthUnit);
  const roundToM = toMetres(roundTo, unit);
  const fabrics = new Map(pattern.fabrics.map(({ id, label }) => [id, label]));
  const sheets = pattern.yarns.map((yarn, index): YarnSheet => {
    const need = needs[index];
    if (need === undefined) throw new RangeError("the needs are of another pattern");
    const rows = need.sizes.flatMap((row, sizeAt) => {
      const size = pattern.sizes[sizeAt];
      return size ? [{ ...row, size, publishMetres: publishedMetres(row.upperMetres, roundToM) }] : [];
    });
    return {
      yarn,
      rows,
      state: stateOf(rows),
      perStitch: need.fabrics.map(({ fabric, metresPerStitch }) => ({
        fabric: fabrics.get(fabric) ?? fabric,
        cm: metresPerStitch * 100,
      })),
      reported: reportedOf(testers, { pattern, yarn }),
      suspects: need.suspects,
    };
  });
  return { sheets, sizes: pattern.sizes, unit, roundTo, names, faults: stitchFaults(pattern) };
}

function stateOf(rows: readonly YarnRow[]): YarnState {
  if (rows.every(({ stitches }) => stitches === 0)) return "no pieces";
  return rows.every(({ expectedMetres }) => expectedMetres === null) ? "no reports" : "told";
}

function reportedOf(
  testers: YarnGiven["testers"],
  { pattern, yarn }: { pattern: PatternDocument; yarn: Yarn },
): ReportedYarn[] {
  const order = new Map(pattern.sizes.map(({ id }, index) => [id, index]));
  return testers.flatMap(({ tester, name, size, yarn: used }) =>
    used
      .filter((use) => use.yarn === yarn.id)
      .map(({ metres, isSetAside }) => ({ tester, name, sizeAt: order.get(size) ?? 0, metres, isSetAside })),
  );
}
