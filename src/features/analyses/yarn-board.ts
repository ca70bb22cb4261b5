import { settleCall, type Suspect } from "@/engine/gaps";
import { own, type CallDocument, type PatternDocument, type Size } from "@/engine/pattern";
import { yarnNeeds, type SizeNeed } from "@/engine/yarn";
import type { LengthUnit } from "@/engine/units";
import { toMetres, yarnUnit, type YarnUnit } from "@/ui/format-yarn-length";
import type { LoadedAnalysis } from "./loaders";

type Yarn = PatternDocument["yarns"][number];

/** Why there is nothing to tell of a yarn, or that there is. */
export type YarnState = "told" | "no pieces" | "no reports";

export interface YarnRow extends Omit<SizeNeed, "size"> {
  readonly size: Size;
}

/** What one tester says she used of a yarn. */
export interface ReportedYarn {
  readonly tester: string;
  readonly name: string;
  /** Where her size stands in the pattern's order. */
  readonly sizeAt: number;
  readonly metres: number;
  readonly isSetAside: boolean;
}

export interface YarnSheet {
  readonly yarn: Yarn;
  readonly state: YarnState;
  readonly rows: readonly YarnRow[];
  /** By the fabric's label, cm of yarn in a stitch at the stated gauge. */
  readonly perStitch: readonly { readonly fabric: string; readonly cm: number }[];
  readonly reported: readonly ReportedYarn[];
  readonly suspects: readonly Suspect[];
}

/** The yarn page's content. */
export interface YarnBoard {
  readonly sheets: readonly YarnSheet[];
  readonly sizes: readonly Size[];
  readonly unit: YarnUnit;
  /** Amounts to publish are rounded up to a multiple of so many metres or yards. */
  readonly roundTo: number;
  readonly names: ReadonlyMap<string, string>;
}

/** How much of each yarn every size needs, beside what testers used. */
export function yarnBoard(
  { document, output, names }: LoadedAnalysis,
  { unit: lengthUnit, roundTo }: { unit: LengthUnit; roundTo: number },
): YarnBoard {
  const unit = yarnUnit(lengthUnit);
  const { call } = settleCall(document);
  const { yarns } = yarnNeeds(call, toMetres(roundTo, unit));
  const { pattern } = document;
  const fabrics = new Map(pattern.fabrics.map(({ id, label }) => [id, label]));
  const sheets = pattern.yarns.map((yarn, at): YarnSheet => {
    const need = yarns[at];
    if (need === undefined) throw new RangeError("the needs are of another pattern");
    const rows = need.sizes.flatMap((row, sizeAt) => {
      const size = pattern.sizes[sizeAt];
      return size ? [{ ...row, size }] : [];
    });
    return {
      yarn,
      rows,
      state: stateOf(rows),
      perStitch: need.fabrics.map(({ fabric, metresPerStitch }) => ({
        fabric: fabrics.get(fabric) ?? fabric,
        cm: metresPerStitch * 100,
      })),
      reported: reportedOf(call, yarn, names),
      suspects: output.suspects.filter(({ what, id }) => what === "yarn" && id === yarn.id),
    };
  });
  return { sheets, sizes: pattern.sizes, unit, roundTo, names };
}

function stateOf(rows: readonly YarnRow[]): YarnState {
  if (rows.every(({ stitches }) => stitches === 0)) return "no pieces";
  return rows.every(({ expectedMetres }) => expectedMetres === null) ? "no reports" : "told";
}

function reportedOf(call: CallDocument, yarn: Yarn, names: ReadonlyMap<string, string>): ReportedYarn[] {
  const order = Object.fromEntries(call.pattern.sizes.map(({ id }, at) => [id, at]));
  return call.testers.flatMap(({ id, size, yarn: entries }) => {
    const ofYarn = entries.filter((entry) => entry.yarn === yarn.id);
    const counted = ofYarn.filter(({ decision }) => decision !== "set-aside");
    const told = counted.length > 0 ? counted : ofYarn;
    if (told.length === 0) return [];
    const metres = told.reduce((sum, { grams, metresPer100g }) => sum + (grams * metresPer100g) / 100, 0);
    const isSetAside = counted.length === 0;
    return [{ tester: id, name: names.get(id) ?? id, sizeAt: own(order, size) ?? 0, metres, isSetAside }];
  });
}
