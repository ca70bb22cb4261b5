import { beforeAll, describe, expect, it } from "vitest";
import { gaps, type Cause, type CauseInput } from "../../../../src/engine/gaps";
import type { Solver } from "../../../../src/engine/integer-program";
import type { CallDocument } from "../../../../src/engine/pattern";
import { namedCauses } from "../../../../src/engine/results";
import { LEAVE } from "../../../../src/features/results/changes/chosen-field";
import { readChosen } from "../../../../src/features/results/changes/chosen";
import { runEngineTask } from "../../../../src/engine/engine-task";
import { planOutcome, type PlanOutcome } from "../../../../src/features/results/changes/plan-outcome";
import { readPlanOutput } from "../../../../src/features/results/changes/plan-schema";
import { missedWords } from "../../../../src/features/results/changes/plan-copy";
import { proposals, type Proposal } from "../../../../src/features/results/changes/proposals";
import { proposedReason, acceptedCopy } from "../../../../src/features/results/changes/accepted-copy";
import { completeReport } from "../../../../src/features/testing/report/complete-report";
import { highsSolver } from "../../../../src/solver/highs-solver";
import { saltmarshCall } from "../../../../prisma/demo/saltmarsh-call";

let solver: Solver;
beforeAll(async () => {
  solver = await highsSolver();
});

/** The demonstration's call as the application keeps it: with every count that a tester worked. */
const SIMULATED = saltmarshCall().call;
const CALL: CallDocument = {
  ...SIMULATED,
  testers: SIMULATED.testers.map((tester) => completeReport(tester, SIMULATED.pattern)),
};
const OUTPUT = gaps(CALL);

function proposed(causes: readonly Cause[] = OUTPUT.causes, { pattern } = CALL): Proposal[] {
  return proposals({ pattern, differences: { causes: namedCauses(pattern, causes) }, unit: "cm" });
}

const FOUND = { standardError: 0.1, unit: "cm", explains: 0.4, evidence: 6, restsOn: [], rivals: [] } as const;

function cause(input: CauseInput, change: Partial<Cause> = {}): Cause {
  return { ...FOUND, estimate: 1, ...input, ...change };
}

function only(input: CauseInput, change: Partial<Cause> = {}): Proposal {
  const [proposal] = proposed([cause(input, change)]);
  if (proposal === undefined) throw new Error("nothing is proposed");
  return proposal;
}

function labels({ alternatives }: Proposal): string[] {
  return alternatives.flatMap(({ ways }) => ways.map(({ label }) => label));
}

describe("what is proposed of each kind of cause", () => {
  it("corrects an edging, recalculating or keeping the counts", () => {
    const proposal = only({ kind: "allowance", id: "neck-band" }, { estimate: -0.8 });
    expect(proposal.sentence).toBe("“Neck band” takes 0.8 cm more than stated (±\u00a00.1\u00a0cm).");
    // By the pattern's terms: two bands in the neck's width, one in its depth; tolerances of 1 cm.
    expect(proposal.moved).toBe(
      "Neck width 1.6 cm too narrow in every size; Front neck depth 0.8 cm too short in every size.",
    );
    expect(proposal.explains).toBe("It explains 40 % of everything that came out different from the pattern.");
    expect(labels(proposal)).toEqual([
      "Set “Neck band” to 2.8 cm (now 2) and recalculate stitches and rows",
      "Set “Neck band” to 2.8 cm (now 2) and keep stitches and rows",
    ]);
    expect(proposal.preselected).toBe("input allowance.neck-band..");
    expect(proposal.because).toBe(
      "We suggest this, because Neck width and Front neck depth will then meet your targets.",
    );
  });

  it("fixes instructions, or uses the number really worked where the pattern's rules allow it", () => {
    const proposal = only({ kind: "count", id: "body", size: "size-2x" }, { estimate: 7, unit: "stitches" });
    // The grading's 292 and 7 more; 299 is no multiple of 4.
    expect(labels(proposal)).toEqual([
      "Fix the instructions for size 2X",
      "Change the grading to the 299 that testers really worked",
    ]);
    expect(proposal.alternatives[0]?.ways[0]?.detail).toContain("They should make 292 of “Body stitches”");
    expect(proposal.preselected).toBe("input count.body..size-2x");
    expect(proposal.because).toContain("299 is not a multiple of 4");
    // 7 stitches at 2.2 a centimetre are 3.2 cm around, half of it across.
    expect(proposal.moved).toBe("Bust 3.2 cm too wide in 2X; Width above the hem rib 1.6 cm too wide in 2X.");
  });

  it.each([
    [
      { kind: "settle", id: "stocking", direction: "rows" },
      "Correct how “Stocking stitch” changes from swatch to garment",
    ],
    [{ kind: "offset", id: "length" }, "Add a correction to “Length”"],
    [{ kind: "step", id: "upper-arm" }, "Add a correction to “Upper arm” that grows with the size"],
    [{ kind: "from", id: "upper-arm", size: "size-xl" }, "Add a correction to “Upper arm” from size XL up"],
  ] as const)("corrects %o where it stands", (input, does) => {
    expect(labels(only(input, { estimate: 0.05 }))).toEqual([
      `${does} and recalculate stitches and rows`,
      `${does} and keep stitches and rows`,
    ]);
  });

  it("cannot recalculate the counts where a measurement has no target", () => {
    const measurements = CALL.pattern.measurements.map(({ target: _, ...rest }) => rest);
    const call = { ...CALL, pattern: { ...CALL.pattern, measurements } };
    const [proposal] = proposed([cause({ kind: "allowance", id: "neck-band" })], call);
    expect(proposal?.alternatives[0]?.ways.map(({ by }) => by)).toEqual(["published"]);
    expect(proposal?.preselected).toBe("published allowance.neck-band..");
  });

  it("leaves weak evidence", () => {
    expect(only({ kind: "offset", id: "length" }, { evidence: 1.2 })).toMatchObject({ preselected: LEAVE });
  });
});

describe("what explains the same", () => {
  const tied = { evidence: 6, tied: true };

  it("is shown beside the cause with how to tell them apart", () => {
    const rivals = [
      { kind: "offset", id: "upper-arm", ...tied },
      { kind: "settle", id: "stocking", direction: "stitches", evidence: 5, tied: false },
    ] as const;
    const proposal = only({ kind: "allowance", id: "sleeve-seam" }, { rivals });
    expect(proposal.alternatives.map(({ likeness }) => likeness)).toEqual(["named", "tied", "near"]);
    expect(proposal.tellApart).toBe(
      "Reports can’t tell these apart. To find out, measure “Sleeve seam” itself on a finished garment.",
    );
    expect(proposal.alternatives.flatMap(({ ways }) => ways.map(({ value }) => value))).toEqual([
      "input allowance.sleeve-seam..",
      "published allowance.sleeve-seam..",
      "input offset.upper-arm..",
      "published offset.upper-arm..",
      "input settle.stocking.stitches.",
      "published settle.stocking.stitches.",
    ]);
  });

  it("asks to count on the garment where two counts are equally likely", () => {
    const rivals = [{ kind: "count", id: "body-rows", size: "size-m", ...tied }] as const;
    const proposal = only({ kind: "count", id: "yoke-rows", size: "size-m" }, { rivals, unit: "rows" });
    expect(proposal.tellApart).toContain(
      "Reports can’t tell these apart. To find out, count “Armhole rows” on a finished garment in size M, or count “Body rounds above the rib” on a finished garment in size M.",
    );
  });
});

describe("what is chosen", () => {
  it("is read back in the engine's form", () => {
    expect(readChosen(["input settle.all.rows.", LEAVE, "published count.body..size-2x"])).toEqual({
      ok: true,
      take: [
        { kind: "settle", id: "all", direction: "rows", by: "input" },
        { kind: "count", id: "body", size: "size-2x", by: "published" },
      ],
    });
  });

  it("must be at least one, each number once, and readable", () => {
    expect(readChosen([LEAVE, LEAVE])).toMatchObject({
      ok: false,
      says: expect.stringContaining("Accept at least one"),
    });
    expect(readChosen(["input offset.bust..", "published offset.bust.."])).toMatchObject({ ok: false });
    expect(readChosen(["sideways offset.bust.."])).toMatchObject({ ok: false });
    expect(readChosen(["input nonsense"])).toMatchObject({ ok: false });
  });
});

describe("accepting the proposals of the demonstration's call", { timeout: 60_000 }, () => {
  const found = proposed();
  const taken = (by: "preselected" | "published") => {
    const values = found.map(({ preselected, alternatives }) =>
      by === "preselected" ? preselected : (alternatives[0]?.ways.find((way) => way.by === by)?.value ?? LEAVE),
    );
    const read = readChosen(values);
    if (!read.ok) throw new Error(read.says);
    const plan = readPlanOutput(runEngineTask({ kind: "revise", request: { call: CALL, take: read.take } }, solver));
    if (plan.status !== "revised") throw new Error(plan.status);
    return {
      take: read.take,
      outcome: planOutcome({ before: CALL.pattern, cellsBefore: OUTPUT.cells, take: read.take, plan }),
    };
  };

  const notHeld = ({ rows }: PlanOutcome) =>
    rows.flatMap(({ cells }) => cells).filter(({ after }) => after.cell.verdict !== "holds");

  it("brings every garment to its target, as what is chosen at first promises", () => {
    const { take, outcome } = taken("preselected");
    // The three planted faults: see prisma/demo.
    expect(take).toEqual([
      { kind: "allowance", id: "neck-band", by: "input" },
      { kind: "step", id: "upper-arm", by: "input" },
      { kind: "count", id: "body", size: "size-2x", by: "input" },
    ]);
    expect(outcome.instructions).toEqual([{ label: "Body stitches", size: "2X", was: 299, becomes: 292 }]);
    expect(missedWords(outcome.rows, "cm")).toEqual([]);
    const missedBefore = outcome.rows.flatMap(({ cells }) => cells).filter(({ before }) => before.against === "missed");
    expect(missedBefore.length).toBeGreaterThan(10);
    expect(notHeld(outcome)).toEqual([]);
  });

  it("leaves no difference where everything is published as it came out, and names the targets then missed", () => {
    const { outcome } = taken("published");
    expect(notHeld(outcome)).toEqual([]);
    // 60 stitches at 22 to 10 cm, less two bands of 2.8 cm: 21.7 cm.
    expect(missedWords(outcome.rows, "cm")).toContain(
      "Neck width in XS: 1.3 cm under the target of 23.0 cm (tolerance 1 cm).",
    );
  });

  it("is summarised in a reason within the allowed length", () => {
    const { take } = taken("preselected");
    const reason = proposedReason(acceptedCopy(take, { causes: OUTPUT.causes, pattern: CALL.pattern, unit: "cm" }));
    expect(reason).toContain("Fix the instructions for size 2X.");
    expect(reason).toContain(
      "“Neck band” takes 0.8 cm more than stated (± 0.1 cm). Set “Neck band” to 2.8 cm (now 2) and recalculate stitches and rows. “Upper arm” grows too much per size: 2.5 cm too wide in the largest (± 0.3 cm), and 2.5 cm too narrow in the smallest. Add a correction to “Upper arm” that grows with the size and recalculate stitches and rows. Perhaps in size 2X the instructions give 7 (± 1.6) more stitches for “Body stitches” than your grading. Fix the instructions for size 2X.",
    );
    expect(reason.length).toBeLessThanOrEqual(1_000);
  });
});
