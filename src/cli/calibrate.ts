import { execFile } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { calibrate, type Calibration, type Design, type Fault, type Trouble } from "@/engine/calibration";
import { causesRunText, causesTable } from "./calibrate-causes";
import { fitRunText, fitTable } from "./calibrate-fit";
import { importTable } from "./import-rows";
import { isPromise, PROMISE_NAMES, PROMISES, type PromiseName } from "./promise-rows";

interface Scenario {
  readonly name: string;
  readonly design: Design;
  readonly fault: Fault;
  readonly entryErrorShare: number;
  readonly trouble?: Trouble;
}

const FEW: Design = "1–2 a size, two sizes empty, 30 % lost";
const SCENARIOS: readonly Scenario[] = [
  { name: "drawn from the model, 2–4 a size", design: "2–4 a size", fault: "drawn", entryErrorShare: 0 },
  { name: "drawn from the model, 1–2, two empty", design: FEW, fault: "drawn", entryErrorShare: 0 },
  { name: "one cause, 2–4 a size", design: "2–4 a size", fault: "cause", entryErrorShare: 0 },
  { name: "one cause + small errors, 2–4", design: "2–4 a size", fault: "cause and small errors", entryErrorShare: 0 },
  { name: "one cause, 1–2, two empty", design: FEW, fault: "cause", entryErrorShare: 0 },
  {
    name: "one cause + small errors, 1–2, two empty",
    design: FEW,
    fault: "cause and small errors",
    entryErrorShare: 0,
  },
  { name: "one cause, 3 a size", design: "3 a size", fault: "cause", entryErrorShare: 0 },
  {
    name: "one cause + small errors, 3 a size",
    design: "3 a size",
    fault: "cause and small errors",
    entryErrorShare: 0,
  },
  { name: "nothing wrong, 3 a size", design: "3 a size", fault: "nothing", entryErrorShare: 0 },
  { name: "drawn, with 4 % slips, 2–4 a size", design: "2–4 a size", fault: "drawn", entryErrorShare: 0.04 },
  ...(["2 % of readings wrong", "one tester wholly wrong", "rough noise", "all 4 % tight"] as const).flatMap(
    (trouble) => [
      {
        name: `${trouble}, nothing else`,
        design: "3 a size" as const,
        fault: "nothing" as const,
        entryErrorShare: 0,
        trouble,
      },
      {
        name: `${trouble}, beside real errors`,
        design: "2–4 a size" as const,
        fault: "drawn" as const,
        entryErrorShare: 0,
        trouble,
      },
    ],
  ),
];
const SEED = 20_261_125;
const USUAL_CALLS = 400;
/** Tables whose scenarios have numbers of calls of their own; each scenario runs in a process of its own. */
const TABLES_OF_RUNS = {
  fit: { table: fitTable, runText: fitRunText },
  causes: { table: causesTable, runText: causesRunText },
} as const;
type TableOfRuns = keyof typeof TABLES_OF_RUNS;
/** First argument of a process that runs one scenario of such a table. */
const RUN = "run";
const MAX_OUTPUT_BYTES = 16 * 1024 * 1024;
/** The table of pasted tables, which needs no calls. */
const IMPORT = "import";
const FIGURES = "test/figures";

await main(process.argv.slice(2));

/**
 * `calibrate [CALLS] [PART OF A SCENARIO'S NAME, OR A TABLE OF PROMISES]`: prints the tables; keeps a table of promises, and
 * that of the scenarios if all of them ran, where it ran on 400 calls or more.
 *
 * Several scenarios run side by side, each in a process of its own. `calibrate fit` and `calibrate causes` print and keep
 * tables of their own; that of the causes takes hours. `calibrate import` prints and keeps what is read right of the invented
 * tables.
 */
async function main(args: readonly string[]): Promise<void> {
  const [first = "", second = "", text = ""] = args;
  if (isTableOfRuns(first)) return await keepTableOfRuns(first);
  if (first === IMPORT) {
    const table = importTable();
    process.stdout.write(table);
    return write(`calibration-${IMPORT}.txt`, table);
  }
  if (first === RUN && isTableOfRuns(second)) {
    process.stdout.write(TABLES_OF_RUNS[second].runText(text));
    return;
  }
  const { calls, part } = choicesOf(args);
  const chosen = SCENARIOS.filter(({ name }) => name.includes(part));
  if (!Number.isInteger(calls) || calls < 1 || (chosen.length === 0 && !isPromise(part))) {
    process.stderr.write(
      "calibrate: takes a number of calls above 0, and a part of a scenario’s name or a table of promises.\n",
    );
    process.exitCode = 2;
    return;
  }
  if (isPromise(part)) return keepPromises(part, calls);
  if (chosen.length === 1 && chosen[0]) {
    process.stdout.write(`${describe(chosen[0], calibrate({ ...chosen[0], calls, seed: SEED }))}\n`);
    return;
  }
  process.stdout.write(`${heading(calls)}\n`);
  const names = chosen.map(({ name }) => name);
  const printed = await sideBySide(part === "" ? [...names, ...PROMISE_NAMES] : names, async (name) => {
    const text = await apart([String(calls), name]);
    process.stdout.write(text);
    return text;
  });
  if (part !== "" || calls < USUAL_CALLS) return;
  write("calibration.txt", `${heading(calls)}\n${printed.slice(0, names.length).join("")}`);
  await keepTableOfRuns("fit");
}

async function keepTableOfRuns(name: TableOfRuns): Promise<void> {
  const table = await TABLES_OF_RUNS[name].table((runs) =>
    sideBySide(runs, async (run) => {
      const found = await apart([RUN, name, run]);
      process.stderr.write(`${run} ${found}\n`);
      return found;
    }),
  );
  process.stdout.write(table);
  write(`calibration-${name}.txt`, table);
}

function isTableOfRuns(name: string): name is TableOfRuns {
  return Object.hasOwn(TABLES_OF_RUNS, name);
}

/** The number of calls may be left out. */
function choicesOf([first = "", second = ""]: readonly string[]): { readonly calls: number; readonly part: string } {
  if (first === "") return { calls: USUAL_CALLS, part: "" };
  const calls = Number(first);
  return Number.isNaN(calls) ? { calls: USUAL_CALLS, part: first } : { calls, part: second };
}

function keepPromises(name: PromiseName, calls: number): void {
  const table = PROMISES[name](calls);
  process.stdout.write(`${table}\n`);
  if (calls >= USUAL_CALLS) write(`calibration-${name}.txt`, table);
}

function write(file: string, table: string): void {
  mkdirSync(FIGURES, { recursive: true });
  writeFileSync(`${FIGURES}/${file}`, table);
}

/** Runs as many at once as there are processors. @returns what each gave, in their order. */
async function sideBySide(items: readonly string[], run: (item: string) => Promise<string>): Promise<string[]> {
  const found: string[] = [];
  const waiting = [...items.entries()];
  const worker = async () => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) found[next[0]] = await run(next[1]);
  };
  await Promise.all(Array.from({ length: availableParallelism() }, worker));
  return found;
}

/** What this program prints in a process of its own. */
async function apart(args: readonly string[]): Promise<string> {
  const all = [...process.execArgv, fileURLToPath(import.meta.url), ...args];
  return (await promisify(execFile)(process.execPath, all, { maxBuffer: MAX_OUTPUT_BYTES })).stdout;
}

function heading(calls: number): string {
  return `Calibration over ${calls} simulated calls a scenario, first seed ${SEED}; errors in tolerances. Bars: docs/method.md#calibration.\n`;
}

function describe({ name, fault }: Scenario, { tally, errors }: Calibration): string {
  const model = errors.rootMeanSquare("model");
  const known = errors.rootMeanSquare("known variances");
  const blind = errors.rootMeanSquare("known variances, blind to the cause");
  const bar = fault === "drawn" ? "1.05" : "0.75";
  const share = (label: string, key: string, bar: string) =>
    tally.of(key) === 0
      ? []
      : [`  ${label.padEnd(52)} ${percent(tally.share(key))} of ${String(tally.of(key)).padStart(6)}   ${bar}`];
  return [
    name,
    ...share("90 % intervals that cover", "covered", "88–92 %"),
    `  ${"root mean square error: model".padEnd(52)} ${model.toFixed(3)}`,
    ...(known === 0 ? [] : [bound("  told the true variances, any cause's in them", { model, known, bar })]),
    ...(blind > 0 ? [bound("  told the variances of the errors beside the cause", { model, known: blind, bar })] : []),
    `  ${"  plain average of a cell's readings".padEnd(52)} ${errors.rootMeanSquare("plain average").toFixed(3)}`,
    ...share("off among cells within tolerance", "off within 1", "at most 0.5 %"),
    ...share("holds among cells beyond 1½", "holds beyond 1½", fault === "drawn" ? "at most 1.5 %" : "at most 2 %"),
    ...share("off among cells beyond 1½", "off beyond 1½", "at least 60 %"),
    ...share("holds among cells within ½", "holds within ½", "at least 88 %"),
    ...share("calls that name a cause", "cause named", fault === "nothing" ? "at most 10 %" : ""),
    ...share(
      "planted cause first, where it can be found",
      "first, findable",
      fault === "cause" ? "at least 93 %" : "at least 88 %",
    ),
    ...share(
      "planted cause first, over all calls",
      "first, all calls",
      fault === "cause" ? "about 93 % is the most" : "about 75 % is the most",
    ),
    ...share("off cells mended, where a cause is named", "off cells mended", fault === "cause" ? "at least 95 %" : ""),
    ...share("off cells mended, over all calls", "off cells mended, all calls", ""),
    ...share("cells that the named causes spoil", "cells spoilt", fault === "cause" ? "none" : ""),
    ...share("gross slips set aside", "gross slips found", "at least 95 %"),
    `  ${"other readings set aside".padEnd(52)} ${String(tally.hits("set aside wrongly")).padStart(8)} of ${String(tally.of("set aside wrongly")).padStart(6)}   none`,
    ...share("fits that converged", "converged", ""),
    "",
  ].join("\n");
}

function bound(label: string, { model, known, bar }: { model: number; known: number; bar: string }): string {
  return `  ${label.padEnd(52)} ${known.toFixed(3)}   ratio ${(model / known).toFixed(3)}, at most ${bar}`;
}

function percent(share: number | null): string {
  return `${((share ?? Number.NaN) * 100).toFixed(2).padStart(6)} %`;
}
