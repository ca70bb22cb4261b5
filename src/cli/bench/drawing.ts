import { mkdirSync, writeFileSync } from "node:fs";
import { outlineGarment } from "@/engine/garment";
import { garmentView } from "@/engine/garment-view";
import type { PatternDocument } from "@/engine/pattern";
import { benchBacks, benchCardigan } from "./drawing-garment";
import { processorMs, shownMs } from "./processor-time";

const SIZES = 24;
const PIECES = 12;
const WARM = 10;
const RUNS = 15;
const BAR_MS = 50;
const FIGURES = "test/figures";

/** Times of working a garment and outlining its pieces, in all sizes. */
export function drawingBench(): string {
  const garments = [
    { name: `cardigan of ${PIECES} pieces`, pattern: benchCardigan(SIZES) },
    { name: `${PIECES} backs, its largest piece`, pattern: benchBacks(SIZES, PIECES) },
  ];
  const text = [
    `A garment in ${SIZES} sizes, all pieces worked step by step: the view in which they are smoothed and put together, and the stepped`,
    `outlines with every row. Processor time of all sizes, median of ${RUNS} runs after ${WARM} to warm up. Bar of the view: under ${BAR_MS} ms.`,
    "",
    ...garments.flatMap(({ name, pattern }) => [viewRow(name, pattern), outlineRow(name, pattern)]),
    "",
  ].join("\n");
  mkdirSync(FIGURES, { recursive: true });
  writeFileSync(`${FIGURES}/bench-drawing.txt`, text);
  return text;
}

function viewRow(name: string, pattern: PatternDocument): string {
  const run = () => pattern.sizes.map(({ id }) => garmentView(pattern, pattern.grading ?? {}, id));
  const [fault] = run().flatMap(({ faults }) => faults);
  if (fault !== undefined) throw new Error(`the bench's garment cannot be worked: ${fault.message}`);
  processorMs(run, WARM);
  const ms = processorMs(run, RUNS);
  return `${name.padEnd(32)}view      ${shownMs(ms).padStart(8)}  ${ms < BAR_MS ? "met" : "missed"}`;
}

function outlineRow(name: string, pattern: PatternDocument): string {
  const run = () => pattern.sizes.map(({ id }) => outlineGarment(pattern, id));
  const rows = rowsOf(run());
  processorMs(run, WARM);
  return `${name.padEnd(32)}outlines  ${shownMs(processorMs(run, RUNS)).padStart(8)}  ${rows} rows in all`;
}

function rowsOf(outlines: readonly ReturnType<typeof outlineGarment>[]): number {
  const [fault] = outlines.flatMap(({ faults }) => faults);
  if (fault !== undefined) throw new Error(`the bench's garment cannot be worked: ${fault.message}`);
  return outlines.flatMap(({ pieces }) => pieces).reduce((sum, { steps }) => sum + steps.length, 0);
}
