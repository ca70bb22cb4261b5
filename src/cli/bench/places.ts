import { mkdirSync, writeFileSync } from "node:fs";
import type { SolverAnswer } from "@/engine/integer-program";
import { placeApplicants, type PlacesObjective } from "@/engine/places";
import { highsSolver } from "@/solver/highs-solver";
import { benchApplicants } from "./bench-applicants";
import { processorMs, shownMs } from "./processor-time";
import { solvePlaces } from "./solve-places";

const RUNS = 5;
const SEED = 20_261_126;
const SECONDS_A_STAGE = 300;
const FIGURES = "test/figures";
/** Solvers add up in another order, and stop within a millionth. */
const SAME_MISFIT = 1e-5;

const BOARDS = [
  { applicants: 300, sizes: 12, bar: "" },
  { applicants: 2000, sizes: 12, bar: " (under 2 s)" },
  { applicants: 20_000, sizes: 24, bar: "" },
] as const;

/** Times of placing applicants at best, beside the same problem given whole to HiGHS as an integer program. */
export async function placesBench(): Promise<string> {
  const lines = [
    "Placing applicants by three body measurements, half as many places as applicants, to the proven optimum and with why for everyone; processor time, median of several runs. Bar in brackets.",
  ];
  for (const { bar, ...size } of BOARDS) {
    const document = benchApplicants({ ...size, seed: SEED });
    const answer = placeApplicants(document);
    if (answer.status === "faults") throw new Error("the bench's applicants hold no locks");
    const median = processorMs(() => placeApplicants(document), RUNS);
    lines.push(
      `${size.applicants} applicants × ${size.sizes} sizes: ${shownMs(median)}${bar}, ${objectiveWords(answer.objective)}`,
      await whole(document, answer.objective),
    );
  }
  lines.push(`Memory of this process at the end: ${Math.round(process.memoryUsage().rss / 2 ** 20)} MB`, "");
  const text = lines.join("\n");
  mkdirSync(FIGURES, { recursive: true });
  writeFileSync(`${FIGURES}/bench-places.txt`, text);
  return text;
}

async function whole(document: Parameters<typeof solvePlaces>[0], ours: PlacesObjective): Promise<string> {
  const highs = await highsSolver({ maxSeconds: SECONDS_A_STAGE });
  let once = 0;
  const solved = solvePlaces(document, (lpText) => {
    let answer: SolverAnswer = { status: "not run", values: new Map() };
    once += processorMs(() => {
      answer = highs(lpText);
    }, 1);
    return answer;
  });
  const head = `  the same given whole to HiGHS, in it alone: ${shownMs(once)}`;
  return solved === null
    ? `${head}, not proven in ${SECONDS_A_STAGE} s a stage`
    : `${head}, ${objectiveWords(solved)}, ${isSame(ours, solved) ? "the same" : "NOT THE SAME"}`;
}

function isSame(one: PlacesObjective, other: PlacesObjective): boolean {
  const isAlike = one.leastFilled === other.leastFilled && one.filled === other.filled;
  return isAlike && Math.abs(one.misfit - other.misfit) < SAME_MISFIT;
}

function objectiveWords({ leastFilled, filled, misfit }: PlacesObjective): string {
  return `${leastFilled} of the least and ${filled} places filled, misfit ${misfit.toFixed(6)}`;
}
