import { plainNumber } from "./plain-number";
import { readTableLength, readSwatchCount } from "./read-cell";

/** A swatch as written in one cell; parts that it does not tell are undefined. */
export interface GaugeText {
  readonly stitches?: number;
  readonly rows?: number;
  readonly overCm?: number;
}

const NUMBER = String.raw`(\d+(?:[.,]\d+)?\s*[½¼¾]?)`;
const STITCHES = new RegExp(
  String.raw`${NUMBER}\s*(?:sts?|stitch(?:es)?|sc|dc|hdc|tr|m|maschen|mailles?|puntos?)\b`,
  "i",
);
const ROWS = new RegExp(String.raw`${NUMBER}\s*(?:rows?|rounds?|rnds?|r|reihen|rd|runden|rangs?|vueltas?)\b`, "i");
const PAIR = new RegExp(String.raw`^${NUMBER}\s*(?:sts?|m)?\s*(?:x|×|by|\/|and|&|und|,(?=\s)|;|:)\s*${NUMBER}\b`, "i");
const OVER = /(?:over|per|in|to|=|auf|\/|for)?\s*(\d+(?:[.,]\d+)?)\s*(cm|inch(?:es)?|in\b|"|”|″)/i;

/** Reads `18 M / 26 R auf 10 cm`, `18 sts x 26 rows over 4 in` or `18 x 26`. */
export function readGaugeText(text: string): GaugeText {
  const [over = "", length = "", unit = ""] = OVER.exec(text) ?? [];
  const counts = over === "" ? text : text.replace(over, " ");
  const [, first, second] = PAIR.exec(plainNumber(counts)) ?? [];
  const stitches = STITCHES.exec(counts)?.[1] ?? first;
  const rows = ROWS.exec(counts)?.[1] ?? second;
  const overCm = length === "" ? undefined : readTableLength(`${length} ${unit}`, "cm");
  return {
    ...(stitches === undefined ? {} : counted("stitches", stitches)),
    ...(rows === undefined ? {} : counted("rows", rows)),
    ...(overCm?.ok ? { overCm: overCm.value } : {}),
  };
}

function counted(part: "stitches" | "rows", text: string): GaugeText {
  const read = readSwatchCount(text);
  return read.ok ? { [part]: read.value } : {};
}
