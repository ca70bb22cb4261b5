import { z } from "zod";
import { calibrateFit, type FitScenario } from "@/engine/calibration";

/** Not those that the priors and thresholds were chosen on (docs/method.md#fit). */
const SEED = 420_261_130;
const QUIET_CALLS = 2000;
const DEPARTING_CALLS = 600;
/** Apart from the seeds of the other scenarios. */
const SEED_STEP = 1_000_000;
const MAX_LOSS = 5;
const MIN_FOUND = 85;

const QUIET: FitScenario = { testersPerSize: 3, departs: "nowhere", hasErrors: false, answersOtherwise: false };

interface FitRun {
  readonly scenario: FitScenario;
  readonly calls: number;
  readonly seed: number;
}

/** What one run counted, as one process tells another. */
const countedSchema = z.object({
  counts: z.array(z.tuple([z.string(), z.object({ hits: z.int(), of: z.int() })])),
  known: z.array(z.number()),
});

interface Counted {
  readonly counts: ReadonlyMap<string, { readonly hits: number; readonly of: number }>;
  readonly known: readonly number[];
}

/** One scenario, in a process of its own: reads it from `text`, and returns what `fitTable` reads. */
export function fitRunText(text: string): string {
  const { scenario, calls, seed } = runSchema.parse(JSON.parse(text));
  const { tally, known } = calibrateFit(scenario, { calls, seed });
  return JSON.stringify({ counts: tally.entries(), known });
}

const runSchema: z.ZodType<FitRun> = z.object({
  scenario: z.object({
    testersPerSize: z.int(),
    departs: z.enum(["nowhere", "one or two sizes", "three sizes or more"]),
    hasErrors: z.boolean(),
    answersOtherwise: z.boolean(),
  }),
  calls: z.int(),
  seed: z.int(),
});

const TESTERS = [2, 3, 4] as const;

/** In the order of the table; the seeds of no two overlap. */
const SCENARIOS: readonly FitScenario[] = [
  ...TESTERS.map((testersPerSize) => ({ ...QUIET, testersPerSize })),
  { ...QUIET, hasErrors: true },
  { ...QUIET, answersOtherwise: true },
  ...(["three sizes or more", "one or two sizes"] as const).flatMap((departs) =>
    TESTERS.map((testersPerSize) => ({ ...QUIET, testersPerSize, departs })),
  ),
];

/**
 * The table of the model of the fit: findings where nothing is wrong, what is found of a departure of a whole step beside
 * what a test finds that is told the true parameters, and how often intervals hold the truth.
 *
 * @param apart runs one scenario in a process of its own, and gives what `fitRunText` returned there.
 */
export async function fitTable(apart: (runs: readonly string[]) => Promise<readonly string[]>): Promise<string> {
  const lines: string[] = [];
  const print = (line: string) => void lines.push(line);
  const runs = SCENARIOS.map((scenario, index): FitRun => {
    const calls = scenario.departs === "nowhere" ? QUIET_CALLS : DEPARTING_CALLS;
    return { scenario, calls, seed: SEED + index * SEED_STEP };
  });
  const found = (await apart(runs.map((run) => JSON.stringify(run)))).map((text): Counted => {
    const { counts, known } = countedSchema.parse(JSON.parse(text));
    return { counts: new Map(counts), known };
  });
  const [quiet, unlike, broad, narrow] = [found.slice(0, 3), found.slice(3, 5), found.slice(5, 8), found.slice(8)];
  const limits = quiet.map(({ known }) => limitOf(known));
  const label = (index: number) => `${TESTERS[index] ?? 0} testers a size`;
  print(
    `Fit, over ${QUIET_CALLS} simulated calls with nothing wrong and ${DEPARTING_CALLS} with a departure, first seed ${SEED}; answers spread by 0.7 of a step. Bars: docs/method.md#calibration.`,
  );
  print("");
  print("nothing wrong: calls with a finding in any of 3 areas");
  quiet.forEach((run, index) => print(falseRow(label(index), run)));
  unlike.forEach((run, index) =>
    print(falseRow(index === 0 ? "3, garments not as planned" : "3, answers spread otherwise", run)),
  );
  print("");
  print("in one area a whole step tighter or looser in three of the smallest or largest sizes, in more, or in all");
  broad.forEach((run, index) => {
    const leastFound = TESTERS[index] === 4 ? MIN_FOUND : null;
    printPower(run, { limit: limits[index] ?? Infinity, print, label: label(index), leastFound });
    printWhere(run, print);
  });
  print("");
  print("the same in one or two sizes at an end");
  narrow.forEach((run, index) =>
    printPower(run, { limit: limits[index] ?? Infinity, print, label: label(index), leastFound: null }),
  );
  print("");
  print("90 % intervals of the ease that feels right");
  quiet.forEach((run, index) =>
    print(row(`nothing wrong, ${label(index)}`, share(run, "ease covered"), "at least 88 %")),
  );
  return `${lines.join("\n")}\n`;
}

/** Which the statistic of the test that is told the truth passes in 5 % of calls with nothing wrong. */
function limitOf(known: readonly number[]): number {
  return known.toSorted((left, right) => left - right)[Math.floor(0.95 * known.length)] ?? Infinity;
}

interface PowerGiven {
  readonly label: string;
  readonly limit: number;
  /** Percent; null where there is no bar. */
  readonly leastFound: number | null;
  readonly print: (line: string) => void;
}

function printPower(run: Counted, { label, limit, leastFound, print }: PowerGiven): void {
  const { known } = run;
  const power = share(run, "found");
  const bound = (known.filter((statistic) => statistic > limit).length / known.length) * 100;
  const loss = { percent: bound - power.percent, of: known.length };
  print(`  ${label}`);
  print(row("  found", power, leastFound === null ? "" : `at least ${leastFound} %`));
  print(row("  found by a test told the true parameters", { percent: bound, of: known.length }, ""));
  print(row("  lost to it, points", loss, `at most ${MAX_LOSS}`));
}

function printWhere(run: Counted, print: (line: string) => void): void {
  print(row("  something found in another area", share(run, "false finding"), "at most 5 %"));
  print(row("  tight and loose told right", share(run, "right direction"), ""));
  print(row("  begins and ends between the sizes told", share(run, "bounds covered"), "at least 88 %"));
  print(row("  begins and ends where it is told", share(run, "bounds exact"), ""));
  print(
    row(
      "  ease that feels right covered, where it departs",
      share(run, "ease covered where it departs"),
      "at least 88 %",
    ),
  );
  print(row("  ease that feels right covered, in the other sizes", share(run, "ease covered beside"), "at least 88 %"));
}

interface Share {
  readonly percent: number;
  readonly of: number;
}

function share({ counts }: Counted, name: string): Share {
  const { hits, of } = counts.get(name) ?? { hits: 0, of: 0 };
  return { percent: (hits / of) * 100, of };
}

function falseRow(label: string, run: Counted): string {
  return row(label, share(run, "false finding"), "at most 5 %");
}

function row(label: string, { percent, of }: Share, bar: string): string {
  const verdict = bar === "" ? "" : `${bar}: ${meets(percent, bar) ? "met" : "missed"}`;
  return `  ${label.padEnd(54)} ${percent.toFixed(1).padStart(5)} of ${String(of).padStart(6)}   ${verdict}`.trimEnd();
}

function meets(percent: number, bar: string): boolean {
  const [first = 0, second] = bar.match(/\d+/gu)?.map(Number) ?? [];
  if (second !== undefined) return first <= percent && percent <= second;
  return bar.startsWith("at least") ? percent >= first : percent <= first;
}
