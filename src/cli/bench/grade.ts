import { mkdirSync, writeFileSync } from "node:fs";
import {
  gradedMeasurements,
  gradeFrontier,
  gradePattern,
  gradingObjective,
  solveByProgram,
  type FrontierOutcome,
  type GradingObjective,
  type SolvedCounts,
} from "@/engine/grading";
import { draftQuestions, patternChanges, readDraft } from "@/engine/editing";
import type { Solver } from "@/engine/integer-program";
import { brokenTies, gradingWarnings, type PatternDocument } from "@/engine/pattern";
import { finishedMeasurements } from "@/engine/prediction";
import { sanityRemarks } from "@/engine/sanity";
import { highsSolver } from "@/solver/highs-solver";
import { benchGarment } from "./bench-garment";
import { glpkSolver } from "./glpk-solver";
import { processorMs, shownMs } from "./processor-time";

const RUNS = 5;
const SIZES = 12;
const GROUPS = 5;
/** A stage that is given whole may take this long, then counts as not proven. */
const SECONDS_A_STAGE = 20;
const FIGURES = "test/figures";

/** Times of grading a whole garment group by group, beside the same program given whole to HiGHS and to GLPK. */
export async function gradeBench(): Promise<string> {
  const pattern = benchGarment({ sizes: SIZES, groups: GROUPS });
  const lines = [
    `Grading ${SIZES} sizes × ${pattern.counts.length} counts in groups of four × ${pattern.measurements.length} targets to the proven optimum of every stage; processor time. Bars in brackets.`,
  ];
  const ours = await highsSolver();
  gradePattern({ pattern }, ours);
  for (const slack of [0, 0.25]) {
    const graded = gradePattern({ pattern, slack }, ours);
    const median = processorMs(() => gradePattern({ pattern, slack }, ours), RUNS);
    lines.push(`slack ${slack}, group by group: ${shownMs(median)} (under 2 s), ${outcomeWords(graded)}`);
    lines.push(whole("HiGHS", pattern, { slack, solver: await highsSolver({ maxSeconds: SECONDS_A_STAGE }) }));
    lines.push(whole("GLPK", pattern, { slack, solver: await glpkSolver(SECONDS_A_STAGE) }));
  }
  const frontier = gradeFrontier(pattern, ours);
  lines.push(
    `All best trade-offs of deviation and unevenness: ${shownMs(processorMs(() => gradeFrontier(pattern, ours), RUNS))} (under 1 s), ${frontierWords(frontier)}`,
  );
  const graded = gradePattern({ pattern }, ours);
  if (graded.status === "optimal") {
    const typed = { ...pattern, grading: graded.grading };
    lines.push(
      `Every measurement anew while a number is typed: ${shownMs(processorMs(() => gradedMeasurements(typed), 50))} (under 16 ms)`,
      `Everything that the editor computes while a number is typed: ${shownMs(processorMs(() => computeEditor(typed), 50))} (under 16 ms)`,
    );
  }
  lines.push(`Memory of this process at the end: ${Math.round(process.memoryUsage().rss / 2 ** 20)} MB`, "");
  const text = lines.join("\n");
  mkdirSync(FIGURES, { recursive: true });
  writeFileSync(`${FIGURES}/bench-grade.txt`, text);
  return text;
}

function frontierWords(found: FrontierOutcome): string {
  if (found.status !== "optimal") return found.status;
  const [nearest, even] = [found.frontier[0], found.frontier.at(-1)];
  const words = ({ deviation = Number.NaN, unevenness = Number.NaN } = {}) =>
    `deviation ${deviation.toFixed(2)} with unevenness ${unevenness}`;
  return `proven, ${found.frontier.length} gradings from ${words(nearest)} to ${words(even)}`;
}

/** What the editor computes at every key: the draft, its faults and questions, and its measurements. */
function computeEditor(pattern: PatternDocument): void {
  const { document } = readDraft(pattern, "cm");
  if (document === null) throw new Error("the bench's garment is a document");
  gradingWarnings(document);
  draftQuestions(pattern, document, {});
  patternChanges(pattern, document);
  finishedMeasurements(document);
  brokenTies(document);
  sanityRemarks(document, (cm) => `${cm} cm`);
}

function whole(name: string, pattern: PatternDocument, { slack, solver }: { slack: number; solver: Solver }): string {
  const { counts, measurements } = pattern;
  let solved: SolvedCounts | undefined;
  const once = processorMs(() => {
    solved = solveByProgram({ pattern, counts, measurements, slack }, solver);
  }, 1);
  const words =
    solved?.status === "optimal"
      ? `proven, ${costWords(costOfGrading({ ...pattern, grading: solved.grading }, slack))}`
      : solved?.status === "limit"
        ? `not proven in ${SECONDS_A_STAGE} s: stopped in stage ${solved.limit.stage} at ${solved.limit.value.toFixed(4)}`
        : `no answer in ${SECONDS_A_STAGE} s a stage`;
  return `  the same given whole to ${name}: ${shownMs(once)}, ${words}`;
}

function costOfGrading(pattern: PatternDocument, slack: number): GradingObjective {
  return gradingObjective(pattern, gradedMeasurements(pattern), slack);
}

function outcomeWords(graded: ReturnType<typeof gradePattern>): string {
  return graded.status === "optimal" ? `proven, ${costWords(graded.objective)}` : graded.status;
}

function costWords({ beyond, deviation, unevenness, sum }: GradingObjective): string {
  return `beyond ${beyond.toFixed(4)}, deviation ${deviation.toFixed(4)}, unevenness ${unevenness}, sum ${sum}`;
}
