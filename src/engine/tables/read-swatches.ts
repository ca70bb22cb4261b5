import type { Fabric, Tester } from "../pattern";
import { GAUGE_WIDTH_CM } from "../units";
import { readSwatchCount, readTableLength, type ReadNumber, readYesNo } from "./read-cell";
import { readGaugeText } from "./read-gauge-text";
import { readToolSize } from "./read-tool-size";
import { answered, readNumbers, withUnit, type RowReading } from "./row-reading";
import { gaugeQuestion, toolQuestion } from "./report-questions";

interface Swatches {
  readonly swatches: Tester["swatches"];
  /** Of every fabric with stitches or rows, also those with one of them alone, which give no gauge. */
  readonly counted: readonly CountedSwatch[];
}

export interface CountedSwatch {
  readonly fabric: string;
  readonly stitches: number | null;
  readonly rows: number | null;
  readonly overCm: number;
}

/** The row's swatches, one a fabric with stitches and rows. */
export function readSwatches(reading: RowReading, typed: Record<string, string>): Swatches {
  const washed = readWashed(reading);
  const swatches: Tester["swatches"][number][] = [];
  const counted: CountedSwatch[] = [];
  for (const fabric of reading.pattern.fabrics) {
    const parts = readParts(reading, fabric);
    const { stitches, rows, across, along, tool } = parts;
    if (stitches !== undefined && rows !== undefined) {
      const path = `swatches[${swatches.length}]`;
      for (const [key, part] of Object.entries({ stitches, rows, acrossCm: across, alongCm: along, toolMm: tool })) {
        if (part !== undefined && part.typed !== String(part.value)) typed[`${path}.${key}`] = part.typed;
      }
      const over = reading.choices.swatchOver.trim();
      for (const [key, part] of Object.entries({ acrossCm: across, alongCm: along })) {
        if (part === undefined && over !== `${reading.overCm} cm`) typed[`${path}.${key}`] = over;
      }
      swatches.push({
        fabric: fabric.id,
        toolMm: tool?.value ?? fabric.toolMm,
        stitches: stitches.value,
        acrossCm: across?.value ?? reading.overCm,
        rows: rows.value,
        alongCm: along?.value ?? reading.overCm,
        washed,
      });
      addQuestions(reading, fabric, parts);
    }
    if (stitches === undefined && rows === undefined) continue;
    const overCm = across?.value ?? reading.overCm;
    counted.push({ fabric: fabric.id, stitches: stitches?.value ?? null, rows: rows?.value ?? null, overCm });
  }
  return { swatches, counted };
}

interface Part {
  readonly column: number;
  readonly typed: string;
  readonly value: number;
}

interface Parts {
  readonly stitches?: Part;
  readonly rows?: Part;
  readonly across?: Part;
  readonly along?: Part;
  readonly tool?: Part;
}

function readParts(reading: RowReading, { id }: Fabric): Parts {
  const count = (
    kind: "swatch stitches" | "swatch rows" | "tool",
    read: (text: string) => ReadNumber,
  ): Part | undefined => {
    const found = readNumbers(reading, kind, (text, choice) => (choice.fabric === id ? read(text) : SKIPPED));
    return found
      .filter(({ choice }) => choice.fabric === id)
      .map(({ column, text, value }) => ({ column, typed: text, value }))[0];
  };
  const length = (kind: "swatch across" | "swatch along" | "swatch over"): Part | undefined => {
    const found = readNumbers(reading, kind, (text, choice) =>
      choice.fabric === id ? readTableLength(text, choice.unit) : SKIPPED,
    );
    const own = found.filter(({ choice }) => choice.fabric === id);
    return own.map(({ column, choice, text, value }) => ({ column, typed: withUnit(text, choice.unit), value }))[0];
  };
  const both = readBoth(reading, id);
  const over = length("swatch over") ?? both.over;
  return {
    stitches: count("swatch stitches", readSwatchCount) ?? both.stitches,
    rows: count("swatch rows", readSwatchCount) ?? both.rows,
    tool: count("tool", (text) => readToolSize(text, reading.pattern.craft)),
    across: length("swatch across") ?? over,
    along: length("swatch along") ?? over,
  };
}

/** Stitches and rows of a fabric that stand in one cell, and over what. */
function readBoth(reading: RowReading, fabric: string): Pick<Parts, "stitches" | "rows"> & { readonly over?: Part } {
  const cell = answered(reading, "swatch").find(({ choice }) => choice.fabric === fabric);
  if (cell === undefined) return {};
  const { stitches, rows, overCm } = readGaugeText(cell.text);
  if (stitches === undefined && rows === undefined) {
    const message = `“${cell.text}” does not tell a gauge. Write it like 22 sts x 30 rows over 10 cm.`;
    reading.faults.push({ row: reading.row, column: cell.column, message });
  }
  const part = (value: number | undefined, typed = String(value)) =>
    value === undefined ? undefined : { column: cell.column, typed, value };
  return { stitches: part(stitches), rows: part(rows), over: part(overCm, `${overCm} cm`) };
}

const SKIPPED: ReadNumber = { ok: true, value: 0 };

function addQuestions(
  { row, questions, overCm }: RowReading,
  fabric: Fabric,
  { stitches, rows, across, along, tool }: Parts,
): void {
  const statedOver = fabric.gauge.overCm ?? GAUGE_WIDTH_CM;
  const ask = (part: Part | undefined, message: string | undefined) => {
    if (part !== undefined && message !== undefined) questions.push({ row, column: part.column, message });
  };
  const gauge = (part: Part | undefined, direction: "stitches" | "rows", widthCm: number) =>
    part &&
    ask(
      part,
      gaugeQuestion({
        count: part.value,
        stated: (fabric.gauge[direction] / statedOver) * widthCm,
        direction,
        overCm: widthCm,
      }),
    );
  gauge(stitches, "stitches", across?.value ?? overCm);
  gauge(rows, "rows", along?.value ?? overCm);
  ask(tool, tool && toolQuestion(tool.value));
}

function readWashed(reading: RowReading): boolean {
  const [cell] = answered(reading, "washed");
  if (cell === undefined) return reading.choices.washed;
  const said = readYesNo(cell.text);
  if (said !== null) return said;
  reading.faults.push({
    row: reading.row,
    column: cell.column,
    message: `“${cell.text}” is neither yes nor no. Write yes where the swatch was washed.`,
  });
  return reading.choices.washed;
}
