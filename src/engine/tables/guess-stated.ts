import type { LengthUnit } from "../units";
import { cellAt, columnCount, type Cells } from "./cells";

/** What a table's own words tell beside its numbers; "" where they tell nothing. Numbers as typed. */
export interface Stated {
  readonly name: string;
  readonly craft: "crochet" | "knitting";
  readonly gaugeStitches: string;
  readonly gaugeRows: string;
  readonly gaugeOver: string;
  readonly toolMm: string;
}

const NUMBER = String.raw`(\d+(?:[.,]\d+)?)`;
const STITCHES = new RegExp(String.raw`${NUMBER}\s*(?:sts?|stitch(?:es)?|hdc|sc|dc|tr|[Mm]aschen|M|mailles)\b`);
const ROWS = new RegExp(String.raw`${NUMBER}\s*(?:rows?|rounds?|rnds?|[Rr]eihen|R|rangs)\b`);
const OVER_INCHES = /\b4\s*(?:in|inch|inches)\b|\b4\s*["”″]/i;
const OVER_CM = /\b10\s*cm\b/i;
const TOOL = new RegExp(String.raw`${NUMBER}\s*mm\b`, "i");
const KNITTING = /\bknit|\bneedle|\bcast[ -]?on\b|\bpurl|\bnadel|\bstricken/i;

/**
 * Gauge, tool, craft and name, where the pasted cells happen to tell them.
 *
 * @param view turned where sizes run down. @param unit of the table; a gauge without a width is over the usual one in it.
 */
export function guessStated(view: Cells, { headerRow, unit }: { headerRow: number; unit: LengthUnit }): Stated {
  const rows = view.map((_, row) => joined(view, row));
  const gauge = rows.find((text) => STITCHES.test(text) && (OVER_CM.test(text) || OVER_INCHES.test(text))) ?? "";
  const tool =
    rows.find((text) => /hook|needle|tool|gauge|tension|nadel|maschenprobe/i.test(text) && TOOL.test(text)) ?? "";
  return {
    name: guessName(view, headerRow),
    craft: rows.some((text) => KNITTING.test(text)) ? "knitting" : "crochet",
    gaugeStitches: STITCHES.exec(gauge)?.[1] ?? "",
    gaugeRows: ROWS.exec(gauge)?.[1] ?? "",
    gaugeOver: OVER_CM.test(gauge) ? "10 cm" : OVER_INCHES.test(gauge) || unit === "in" ? "4 in" : "10 cm",
    toolMm: TOOL.exec(tool)?.[1] ?? "",
  };
}

/** The first line above the sizes where it stands alone and is no statement of something else. */
function guessName(view: Cells, headerRow: number): string {
  const above = view.slice(0, headerRow).map((_, row) => filled(view, row));
  const alone = above.find(
    (texts) =>
      texts.length === 1 && !/gauge|tension|hook|needle|measure|maschenprobe|\bsizes?$|\d\s*cm/i.test(texts[0] ?? ""),
  );
  return alone?.[0] ?? "";
}

function filled(view: Cells, row: number): string[] {
  const texts = Array.from({ length: columnCount(view) }, (_, column) => cellAt(view, row, column));
  return texts.filter((text) => text !== "");
}

function joined(view: Cells, row: number): string {
  return filled(view, row).join(" ");
}
