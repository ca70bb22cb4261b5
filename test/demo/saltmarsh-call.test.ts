import { beforeAll, describe, expect, it } from "vitest";
import { highsSolver } from "@/solver/highs-solver";
import { fitModel } from "@/engine/fit";
import { outlineGarment } from "@/engine/garment";
import { gaps, screenOutliers, type CauseInput } from "@/engine/gaps";
import type { Solver } from "@/engine/integer-program";
import { predict } from "@/engine/prediction";
import { reviseCall, type AcceptedProposal } from "@/engine/revision";
import { PLANTED_FAULTS, realPattern, saltmarshCall } from "../../prisma/demo/saltmarsh-call";
import { PLANTED_FIT } from "../../prisma/demo/saltmarsh-fit";

/** What the README tells of the demonstration, and what whoever opens it first must see. */
describe("the demonstration's call", { timeout: 120_000 }, () => {
  const { call, entryErrors } = saltmarshCall();
  const output = gaps(call);
  let solver: Solver;
  beforeAll(async () => {
    solver = await highsSolver();
  });

  it("lists for every tester all counts that they worked", () => {
    const counts = call.pattern.counts.map(({ id }) => id);
    expect(call.testers).toHaveLength(25);
    for (const { worked } of call.testers) expect(Object.keys(worked ?? {})).toEqual(counts);
  });

  it("has a garment that can be worked in every size", () => {
    const { pattern } = call;
    expect(pattern.sizes.flatMap(({ id }) => outlineGarment(pattern, id).faults)).toEqual([]);
  });

  it("names the planted faults and no other, each within two standard errors of what was planted", () => {
    expect(output.causes.map(inputOf).toSorted(byText)).toEqual(
      PLANTED_FAULTS.map(({ cause }) => inputOf(cause)).toSorted(byText),
    );
    for (const cause of output.causes) {
      const amount = PLANTED_FAULTS.find((fault) => byText(inputOf(fault.cause), inputOf(cause)) === 0)?.amount;
      expect(Math.abs(cause.estimate - (amount ?? Number.NaN)) / cause.standardError).toBeLessThan(2);
    }
  });

  it("calls off what really is, and nothing else", () => {
    const real = realPattern();
    const off = output.cells.filter(({ verdict }) => verdict === "off");
    const lengths = (pattern: typeof real, size: string) => predict({ pattern, size }).measurements;
    const trulyOff = call.pattern.sizes.flatMap(({ id }) =>
      call.pattern.measurements.flatMap(({ id: measurement, toleranceCm }, at) => {
        const gap = (lengths(real, id)[at]?.designCm ?? 0) - (lengths(call.pattern, id)[at]?.designCm ?? 0);
        return Math.abs(gap) > toleranceCm ? [`${id} ${measurement}`] : [];
      }),
    );
    expect(off.length).toBeGreaterThanOrEqual(15);
    expect(trulyOff).toEqual(expect.arrayContaining(off.map(({ size, measurement }) => `${size} ${measurement}`)));
  });

  it("sets the slips aside and no other reading", () => {
    expect(entryErrors.length).toBeGreaterThan(0);
    expect(output.suspects.map(({ tester, id, slip, setAside }) => ({ tester, id, slip, setAside }))).toEqual(
      entryErrors.map(({ tester, measurement, slip }) => ({ tester, id: measurement, slip, setAside: true })),
    );
  });

  it("finds the one ease that is planted, and no other", () => {
    const { findings } = fitModel(screenOutliers(call).call, output);
    expect(findings.map(({ area, feels, from }) => ({ area, feels, from }))).toEqual([PLANTED_FIT]);
    expect(findings[0]?.measurement).toBe("bust");
  });

  it.each(["published", "input"] as const)(
    "is mended in every reported cell once the proposals are taken by %s",
    (by) => {
      const take = output.causes.map((cause): AcceptedProposal => ({ ...inputOf(cause), by }));
      const revision = reviseCall({ call, take }, solver);
      if (revision.status !== "revised") throw new Error(JSON.stringify(revision));
      const after = gaps(revision.replayed);
      const reported = after.cells.filter(({ reports }) => reports > 0);
      expect(reported.map(({ size, measurement }) => `${size} ${measurement}`)).toEqual(
        output.cells.filter(({ reports }) => reports > 0).map(({ size, measurement }) => `${size} ${measurement}`),
      );
      expect(reported.filter(({ verdict }) => verdict !== "holds")).toEqual([]);
      expect(after.causes).toEqual([]);
      const tolerances = new Map(call.pattern.measurements.map(({ id, toleranceCm }) => [id, toleranceCm]));
      for (const { measurement, gapCm } of reported)
        expect(Math.abs(gapCm ?? Number.NaN)).toBeLessThan(tolerances.get(measurement) ?? 0);
    },
  );
});

function inputOf({ kind, id, direction, size }: CauseInput): CauseInput {
  return { kind, id, ...(direction && { direction }), ...(size && { size }) };
}

function byText(left: CauseInput, right: CauseInput): number {
  return JSON.stringify(left).localeCompare(JSON.stringify(right));
}
