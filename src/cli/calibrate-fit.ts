import { calibrateFit, type FitCalibration, type FitScenario } from "@/engine/calibration";

/** Not those that the priors and thresholds were chosen on (docs/method.md#fit). */
const SEED = 420_261_130;
const QUIET_CALLS = 2000;
const DEPARTING_CALLS = 1000;
/** Apart from the seeds of the other scenarios. */
const SEED_STEP = 1_000_000;
const MAX_LOSS = 5;
const MIN_FOUND = 85;

const QUIET: FitScenario = { testersPerSize: 3, departs: "nowhere", hasErrors: false, answersOtherwise: false };

/**
 * The table of the model of the fit: findings where nothing is wrong, what is found of a departure of a whole step beside
 * what a test finds that is told the true parameters, and how often intervals hold the truth.
 *
 * @param print called with each line as soon as it is known.
 */
export function printFitCalibration(print: (line: string) => void): void {
  const run = scenarios();
  print(
    `Fit, over ${QUIET_CALLS} simulated calls with nothing wrong and ${DEPARTING_CALLS} with a departure, first seed ${SEED}; answers spread by 0.7 of a step. Bars: docs/method.md#calibration.`,
  );
  print("");
  print("nothing wrong: calls with a finding in any of 3 areas");
  const quiet = [2, 3, 4].map((testersPerSize) => {
    const found = run({ ...QUIET, testersPerSize }, QUIET_CALLS);
    print(falseRow(`${testersPerSize} testers a size`, found));
    return { testersPerSize, ...found };
  });
  print(falseRow("3, garments not as planned", run({ ...QUIET, hasErrors: true }, QUIET_CALLS)));
  print(falseRow("3, answers spread otherwise", run({ ...QUIET, answersOtherwise: true }, QUIET_CALLS)));
  print("");
  print("in one area a whole step tighter or looser in three of the smallest or largest sizes, in more, or in all");
  const limits = quiet.map(({ testersPerSize, known }) => ({ testersPerSize, limit: limitOf(known) }));
  for (const { testersPerSize, limit } of limits) {
    const found = run({ ...QUIET, testersPerSize, departs: "three sizes or more" }, DEPARTING_CALLS);
    printPower(found, {
      limit,
      print,
      label: `${testersPerSize} testers a size`,
      leastFound: testersPerSize === 4 ? MIN_FOUND : null,
    });
    printWhere(found, print);
  }
  print("");
  print("the same in one or two sizes at an end");
  for (const { testersPerSize, limit } of limits) {
    const found = run({ ...QUIET, testersPerSize, departs: "one or two sizes" }, DEPARTING_CALLS);
    printPower(found, { limit, print, label: `${testersPerSize} testers a size`, leastFound: null });
  }
  print("");
  print("90 % intervals of the ease that feels right");
  for (const { testersPerSize, tally } of quiet)
    print(row(`nothing wrong, ${testersPerSize} testers a size`, share(tally, "ease covered"), "88–92 %"));
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

function printPower({ tally, known }: FitCalibration, { label, limit, leastFound, print }: PowerGiven): void {
  const power = share(tally, "found");
  const bound = (known.filter((statistic) => statistic > limit).length / known.length) * 100;
  const loss = { percent: bound - power.percent, of: known.length };
  print(`  ${label}`);
  print(row("  found", power, leastFound === null ? "" : `at least ${leastFound} %`));
  print(row("  found by a test told the true parameters", { percent: bound, of: known.length }, ""));
  print(row("  lost to it, points", loss, `at most ${MAX_LOSS}`));
}

function printWhere({ tally }: FitCalibration, print: (line: string) => void): void {
  print(row("  something found in another area", share(tally, "false finding"), "at most 5 %"));
  print(row("  tight and loose told right", share(tally, "right direction"), ""));
  print(row("  begins and ends between the sizes told", share(tally, "bounds covered"), "at least 88 %"));
  print(row("  begins and ends where it is told", share(tally, "bounds exact"), ""));
  print(
    row("  ease that feels right covered, where it departs", share(tally, "ease covered where it departs"), "88–92 %"),
  );
  print(row("  ease that feels right covered, in the other sizes", share(tally, "ease covered beside"), "88–92 %"));
}

interface Share {
  readonly percent: number;
  readonly of: number;
}

function share(tally: FitCalibration["tally"], name: string): Share {
  return { percent: (tally.share(name) ?? Number.NaN) * 100, of: tally.of(name) };
}

function falseRow(label: string, { tally }: FitCalibration): string {
  return row(label, share(tally, "false finding"), "at most 5 %");
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

/** Runs scenarios, each on seeds of its own. */
function scenarios() {
  let seed = SEED;
  return (scenario: FitScenario, calls: number): FitCalibration => {
    const found = calibrateFit(scenario, { calls, seed });
    seed += SEED_STEP;
    return found;
  };
}
