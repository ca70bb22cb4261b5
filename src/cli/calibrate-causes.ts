import { z } from "zod";
import { calibrate, calibrateCauses, type CausesNamed, type Design, type Trouble } from "@/engine/calibration";
import { crochetedCardigan, knittedPullover } from "@/engine/simulation";

/** Not those that the evidence asked was chosen on (docs/method.md#calibration). */
const SEED = 161_803_398;
/** Apart from the seeds of the other runs. */
const SEED_STEP = 1_000_000;
const TELLABLE_A_KIND = 600;
const CALLS_WITH_NOTHING_WRONG = 2000;
const MAX_LOSS_POINTS = 3;
const MAX_NAMED_PERCENT = 10;
/** Of the normal distribution: half the width of a 95 % interval in standard errors. */
const HALF_OF_95 = 1.96;
const DESIGN: Design = "3 a size";

const KINDS = ["allowance", "settle", "stretch", "count", "offset", "step", "from"] as const;
const FAULTS = ["cause", "cause and small errors"] as const;
const TROUBLES = [
  "none",
  "2 % of readings wrong",
  "one tester wholly wrong",
  "rough noise",
  "all 4 % tight",
] as const satisfies readonly Trouble[];
const FAULT_NAMES = {
  cause: "the cause alone",
  "cause and small errors": "beside small errors everywhere",
} as const;

const runSchema = z.union([
  z.object({ kind: z.enum(KINDS), fault: z.enum(FAULTS), seed: z.int() }),
  z.object({ trouble: z.enum(TROUBLES), seed: z.int() }),
]);
const namedSchema = z.object({
  ...{ tellable: z.int(), named: z.int(), namedByTold: z.int() },
  ...{ onlyModel: z.int(), onlyTold: z.int(), simulated: z.int() },
}) satisfies z.ZodType<CausesNamed>;
const sharesSchema = z.object({ hits: z.int(), of: z.int() });

/** One row, in a process of its own: reads it from `text`, and returns what `causesTable` reads. */
export function causesRunText(text: string): string {
  const run = runSchema.parse(JSON.parse(text));
  if ("trouble" in run) {
    const { trouble, seed } = run;
    const { tally } = calibrate({
      ...{ design: DESIGN, fault: "nothing", trouble, entryErrorShare: 0 },
      ...{ calls: CALLS_WITH_NOTHING_WRONG, seed },
    });
    return JSON.stringify({ hits: tally.hits("cause named"), of: tally.of("cause named") });
  }
  const { kind: causeKind, fault, seed } = run;
  // Only the pullover has a stated stretch.
  const patterns = causeKind === "stretch" ? [knittedPullover()] : [knittedPullover(), crochetedCardigan()];
  return JSON.stringify(
    calibrateCauses({ patterns, design: DESIGN, fault, causeKind, tellable: TELLABLE_A_KIND, seed }),
  );
}

/**
 * The table of the causes: each kind beside what a search names first that is told the true variances, and how often a cause
 * is named where nothing is wrong.
 *
 * @param apart runs each row in a process of its own, and gives what `causesRunText` returned there.
 */
export async function causesTable(apart: (runs: readonly string[]) => Promise<readonly string[]>): Promise<string> {
  const planted = FAULTS.flatMap((fault) => KINDS.map((kind) => ({ kind, fault })));
  const sound = TROUBLES.map((trouble) => ({ trouble }));
  const runs = [...planted, ...sound].map((run, index) => JSON.stringify({ ...run, seed: SEED + index * SEED_STEP }));
  const found = (await apart(runs)).map((text): unknown => JSON.parse(text));
  const named = z.array(namedSchema).parse(found.slice(0, planted.length));
  const shares = z.array(sharesSchema).parse(found.slice(planted.length));
  return [
    `Causes named first, or tied with the first, of those that can be told (docs/method.md#calibration), 3 testers a size, first seed ${SEED}.`,
    "Beside it a search that is told the true variances; lost to it: with half of the 95 % interval of the paired difference.",
    "",
    ...FAULTS.flatMap((fault) => [
      FAULT_NAMES[fault],
      `  ${"kind".padEnd(12)}    named    by the told   points lost   of calls   of simulated`,
      ...planted.flatMap((row, index) => {
        const counts = named[index];
        return row.fault === fault && counts ? [causeRow(row.kind, counts)] : [];
      }),
      "",
    ]),
    "nothing wrong: calls that name a cause",
    ...sound.flatMap(({ trouble }, index) => {
      const share = shares[index];
      return share ? [soundRow(trouble === "none" ? "readings as the model has them" : trouble, share)] : [];
    }),
    "",
  ].join("\n");
}

function causeRow(kind: string, counts: CausesNamed): string {
  const { tellable, named, namedByTold, simulated } = counts;
  if (tellable === 0) return `  ${kind.padEnd(12)}  can be told from others in none of ${simulated} calls`;
  const { lost, half } = lostPoints(counts);
  const cells = [
    percent(named / tellable).padStart(9),
    percent(namedByTold / tellable).padStart(12),
    `${lost.toFixed(1)} ± ${half.toFixed(1)}`.padStart(13),
    String(tellable).padStart(10),
    String(simulated).padStart(14),
  ];
  const verdict = lost <= MAX_LOSS_POINTS ? "met" : "missed";
  return `  ${kind.padEnd(12)}${cells.join(" ")}   at most ${MAX_LOSS_POINTS}: ${verdict}`;
}

/** The paired difference of two shares of the same calls, and half of its 95 % interval, in points. */
function lostPoints({ tellable, onlyModel, onlyTold }: CausesNamed): { lost: number; half: number } {
  const lost = (onlyTold - onlyModel) / tellable;
  const variance = ((onlyTold + onlyModel) / tellable - lost * lost) / tellable;
  return { lost: 100 * lost, half: 100 * HALF_OF_95 * Math.sqrt(variance) };
}

function soundRow(name: string, { hits, of }: { hits: number; of: number }): string {
  const share = hits / of;
  const verdict = share * 100 <= MAX_NAMED_PERCENT ? "met" : "missed";
  return `  ${name.padEnd(32)} ${percent(share)} of ${of}   at most ${MAX_NAMED_PERCENT} %: ${verdict}`;
}

function percent(share: number): string {
  return `${(share * 100).toFixed(1)} %`;
}
