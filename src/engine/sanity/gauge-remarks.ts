import { statedGauge, formatPath, type Fabric, type PathPart } from "../pattern";
import { GAUGE_WIDTH_CM } from "../units";
import type { Garment } from "./garment";
import type { SanityRemark } from "./sanity-remark";

/*
 * Limits of hand work: beyond these a number is probably a typing error (common practice, no source). They are wide
 * on purpose: arm knitting, lace and colourwork lie well inside.
 */
const STITCHES_OVER_10_CM: Range = { min: 1, max: 100 };
const ROWS_OVER_10_CM: Range = { min: 0.5, max: 150 };
const TOOL_MM: Range = { min: 0.5, max: 60 };
const ROWS_TO_A_STITCH: Range = { min: 0.1, max: 6 };
/** Width of a stitch ÷ thickness of the needle or hook: about 1 to 1.7 in the yarn weight table. */
const STITCH_TO_TOOL: Range = { min: 0.4, max: 4 };

interface Range {
  readonly min: number;
  readonly max: number;
}

interface Check {
  readonly value: number;
  readonly range: Range;
  readonly field: readonly PathPart[];
  readonly message: string;
}

/** An implausible gauge, needle or hook, or an implausible combination: the first problem of each fabric. */
export function gaugeRemarks({ pattern, formatLength }: Garment): SanityRemark[] {
  return pattern.fabrics.flatMap((fabric, index) => {
    const over = formatLength(fabric.gauge.overCm ?? GAUGE_WIDTH_CM);
    const found = checksOf(fabric, over).find(({ value, range }) => value < range.min || value > range.max);
    if (found === undefined) return [];
    const path = formatPath(["fabrics", index, ...found.field]);
    return [{ kind: "gauge" as const, path, says: `“${fabric.label}” ${found.message}` }];
  });
}

function checksOf(fabric: Fabric, over: string): readonly Check[] {
  const { toolMm, gauge } = fabric;
  const { stitchesPerCm, rowsPerCm } = statedGauge(fabric);
  const [stitchField, rowField, toolField] = [["gauge", "stitches"], ["gauge", "rows"], ["toolMm"]];
  const stitches = `has ${gauge.stitches} stitches over ${over}`;
  const rows = `has ${gauge.rows} rows over ${over}`;
  const asks = "Was another number meant, or another width?";
  return [
    {
      value: stitchesPerCm * 10,
      range: STITCHES_OVER_10_CM,
      field: stitchField,
      message: `${stitches}, which no hand works. ${asks}`,
    },
    {
      value: rowsPerCm * 10,
      range: ROWS_OVER_10_CM,
      field: rowField,
      message: `${rows}, which no hand works. ${asks}`,
    },
    {
      value: rowsPerCm / stitchesPerCm,
      range: ROWS_TO_A_STITCH,
      field: rowField,
      message: `${rows} and ${gauge.stitches} stitches, a shape that stitches hardly have. ${asks}`,
    },
    {
      value: toolMm,
      range: TOOL_MM,
      field: toolField,
      message: `is worked with a tool of ${toolMm} mm, and there is hardly any such. Was its size’s number meant?`,
    },
    {
      value: 10 / (stitchesPerCm * toolMm),
      range: STITCH_TO_TOOL,
      field: toolField,
      message: `${stitches} on a tool of ${toolMm} mm, which do not go together. ${asks}`,
    },
  ];
}
