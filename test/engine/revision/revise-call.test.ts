import { beforeAll, describe, expect, it } from "vitest";
import { highsSolver } from "@/solver/highs-solver";
import { gaps } from "@/engine/gaps";
import type { Solver } from "@/engine/integer-program";
import { gradingWarnings, type CallDocument, type PatternDocument } from "@/engine/pattern";
import { adjustInput, parseReviseRequest, reviseCall, type AcceptedProposal } from "@/engine/revision";
import { crochetedCardigan, simulateCall } from "@/engine/simulation";

let solver: Solver;
beforeAll(async () => {
  solver = await highsSolver();
});

const PATTERN = withTargets(crochetedCardigan());

/** The cardigan with what its upper arm, sleeve and length should come to. */
function withTargets(pattern: PatternDocument): PatternDocument {
  const eases: Readonly<Record<string, { share: number; easeCm: number }>> = {
    "upper-arm": { share: 0.25, easeCm: 15 },
    sleeve: { share: 0.04, easeCm: 40 },
    length: { share: 0.1, easeCm: 47.5 },
  };
  return {
    ...pattern,
    measurements: pattern.measurements.map((measurement) => {
      const ease = eases[measurement.id];
      return ease ? { ...measurement, target: { body: "bust", ...ease } } : measurement;
    }),
  };
}

/** Three testers a size of a garment that really comes out by `real`. */
function callOf(real: PatternDocument, seed: number): CallDocument {
  const counts = Object.fromEntries(PATTERN.sizes.map(({ id }) => [id, 3]));
  const places = Object.fromEntries(PATTERN.sizes.map(({ id }) => [id, { least: 0, wanted: 3 }]));
  const habits = {
    gaugeSpread: 0.05,
    driftSd: 0.01,
    readingSd: 0.2,
    roundCm: 0.1,
    missingReadings: 0,
    missingSwatches: 0,
    entryErrorShare: 0,
    yarnRatio: 4.6,
  };
  return simulateCall({ pattern: PATTERN, real, testers: counts, places, habits, seed }).call;
}

function revised(call: CallDocument, take: readonly AcceptedProposal[]) {
  const revision = reviseCall({ call, take }, solver);
  if (revision.status !== "revised") throw new Error(JSON.stringify(revision));
  return revision;
}

describe("revising by the named causes", { timeout: 120_000 }, () => {
  const cuff: AcceptedProposal = { kind: "allowance", id: "cuff-edge", by: "published" };
  const call = callOf(adjustInput(PATTERN, cuff, 3, "planted"), 11);

  it("corrects an allowance and leaves the counts, so that the published measurement changes", () => {
    const named = gaps(call).causes[0];
    expect([named, ...(named?.rivals ?? [])].map((cause) => cause?.id)).toContain("cuff-edge");
    const { pattern, changes, after } = revised(call, [cuff]);
    expect(pattern.grading).toEqual(PATTERN.grading);
    expect(changes).toHaveLength(1);
    expect(changes[0]).toMatchObject({ path: "allowances[2].cm", was: 2 });
    expect(Math.abs((changes[0]?.becomes ?? 0) - 5)).toBeLessThan(0.5);
    for (const { gapCm } of after.filter(({ measurement }) => measurement === "sleeve"))
      expect(Math.abs(gapCm)).toBeLessThan(1.5);
  });

  it("solves the counts again if the input is accepted, and only those that depend on it", () => {
    const { pattern, changes, after } = revised(call, [{ ...cuff, by: "input" }]);
    const counts = new Set(changes.filter(({ path }) => path.startsWith("grading")).map(({ path }) => path));
    expect([...counts]).toEqual(["grading.sleeve-rows"]);
    expect(gradingWarnings(pattern)).toEqual([]);
    const sleeve = PATTERN.measurements.find(({ id }) => id === "sleeve");
    after
      .filter(({ measurement }) => measurement === "sleeve")
      .forEach(({ expectedCm, gapCm }, index) => {
        const target = 0.04 * (PATTERN.sizes[index]?.body.bust ?? 0) + 40;
        expect(Math.abs(expectedCm - gapCm - target)).toBeLessThanOrEqual((sleeve?.toleranceCm ?? 0) + 1e-6);
      });
  });

  it("replays the reports against the new revision within tolerance", () => {
    const { pattern } = revised(call, [cuff]);
    const output = gaps({ ...call, pattern });
    expect(output.cells.filter(({ verdict }) => verdict === "off")).toEqual([]);
    expect(gaps(call).cells.filter(({ verdict }) => verdict === "off").length).toBeGreaterThan(3);
  });

  it("fixes the instructions or adopts the number that was really worked", () => {
    const count = { kind: "count", id: "sleeve-stitches", size: "l" } as const;
    const wrong = callOf(adjustInput(PATTERN, count, 8, "planted"), 12);
    const graded = PATTERN.grading?.["sleeve-stitches"]?.l ?? 0;
    const byInput = revised(wrong, [{ ...count, by: "input" }]);
    expect(byInput.pattern).toEqual(PATTERN);
    expect(byInput.changes).toEqual([{ path: "instructions", size: "l", was: graded + 8, becomes: graded }]);
    const byPublished = revised(wrong, [{ ...count, by: "published" }]);
    expect(byPublished.changes).toEqual([
      { path: "grading.sleeve-stitches", size: "l", was: graded, becomes: graded + 8 },
    ]);
  });

  it("names the clash where locked counts leave no answer", () => {
    const locked = {
      ...call,
      pattern: {
        ...call.pattern,
        counts: call.pattern.counts.map((count) =>
          count.id === "sleeve-rows" ? { ...count, locked: { s: 60, m: 50 } } : count,
        ),
      },
    };
    const revision = reviseCall({ call: locked, take: [{ ...cuff, by: "input" }] }, solver);
    expect(revision.status).toBe("infeasible");
    const rules = revision.status === "infeasible" ? revision.clash.map(({ rule, size }) => `${rule} ${size}`) : [];
    expect(rules.toSorted()).toEqual(["locked m", "locked s", "order m"]);
  });

  it("tells what cannot be taken, by its path", () => {
    const take = [{ kind: "allowance", id: "pocket", by: "input" }] as const;
    expect(reviseCall({ call, take }, solver)).toMatchObject({ status: "faults", faults: [{ path: "take[0]" }] });
    expect(parseReviseRequest({ call, take: [{ kind: "allowance", id: "cuff-edge", by: "magic" }] })).toMatchObject({
      ok: false,
      faults: [{ path: "take[0].by" }],
    });
  });
});
