import { calibrateAsking, type AskedCells, type Design } from "@/engine/calibration";
import { crochetedCardigan, knittedPullover } from "@/engine/simulation";

/** How many times as many cells the questions that are told settle as random ones of the same kinds. */
const LEAST_RATIO = 1.5;
const DESIGNS: readonly (readonly [string, Design])[] = [
  ["2–4 testers a size", "2–4 a size"],
  ["1–2 a size, two sizes empty, 30 % lost", "1–2 a size, two sizes empty, 30 % lost"],
];

/** The table of what to ask next. */
export function askingTable(calls: number, seed: number): string {
  const patterns = [knittedPullover(), crochetedCardigan()];
  const rows = DESIGNS.map(([name, design]) => ({ name, found: calibrateAsking({ patterns, design, calls, seed }) }));
  const width = Math.max(...rows.map(({ name }) => name.length));
  return [
    `Cells settled by five questions, each answered before the next is chosen, over ${calls} simulated calls a row, first seed ${seed}.`,
    "",
    ...rows.map(({ name, found }) => `${name.padEnd(width)}  ${rowText(found)}`),
    "",
  ].join("\n");
}

function rowText({ open, expected, settled, settledAtRandom, ratioError }: AskedCells): string {
  const ratio = settled / settledAtRandom;
  return [
    `of ${open.toFixed(1)} open cells a call`,
    `as told ${settled.toFixed(2)} (foreseen ${expected.toFixed(2)})`,
    `at random ${settledAtRandom.toFixed(2)}`,
    `${ratio.toFixed(2)} ± ${ratioError.toFixed(2)} ×`,
    `at least ${LEAST_RATIO} ×`,
    ratio >= LEAST_RATIO ? "met" : "missed",
  ].join("  ");
}
