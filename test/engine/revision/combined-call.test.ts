import { describe, expect, it } from "vitest";
import { gaps } from "@/engine/gaps";
import { CALL_FORMAT_2, parseCall, type CallDocument, type EarlierCall, type PatternDocument } from "@/engine/pattern";
import { combinedCall } from "@/engine/revision";
import { callDocument, reader } from "../../factories/call";
import { patternDocument } from "../../factories/pattern";

/** Worked 98 stitches in S; the revision asks for 90: bust (2 × 90 ÷ 2) + 2 = 92 instead of 100. */
const before = patternDocument();
const revised = patternDocument({
  grading: { width: { small: 90, large: 112 }, height: { small: 100, large: 110 } },
});

function earlier(testers: EarlierCall["testers"], pattern: PatternDocument = before): EarlierCall {
  const { format, places } = callDocument([]);
  return { format, pattern, places, testers };
}

function combined(pattern: PatternDocument, calls: readonly EarlierCall[], own: CallDocument["testers"] = []) {
  return combinedCall(callDocument(own, { format: CALL_FORMAT_2, pattern, calls }));
}

describe("combinedCall", () => {
  it("is the call itself where none comes before it", () => {
    const call = callDocument([reader("ana", { bust: 100 })]);
    expect(combinedCall(call)).toEqual({ call, leftOut: [] });
  });

  it("measures an earlier garment by the numbers that its tester worked, and not by the new ones", () => {
    const { call } = combined(
      revised,
      [earlier([reader("bea", { bust: 103, length: 40.5 })])],
      [reader("ana", { bust: 95 })],
    );
    expect(call.calls).toBeUndefined();
    expect(call.pattern).toBe(revised);
    // By hand: 98 stitches at 20 to 10 cm are 49 cm, twice that and two edgings of 1 cm make 100; 90 stitches make 92.
    const steps = gaps(call).steps.map(({ tester, measurement, designCm, workedStepCm, gapCm }) => ({
      ...{ tester, measurement, designCm, workedStepCm, gapCm },
    }));
    expect(steps).toEqual([
      { tester: "ana", measurement: "bust", designCm: 92, workedStepCm: 0, gapCm: expect.closeTo(3, 9) as number },
      {
        tester: "bea",
        measurement: "bust",
        designCm: 92,
        workedStepCm: expect.closeTo(8, 9) as number,
        gapCm: expect.closeTo(3, 9) as number,
      },
      { tester: "bea", measurement: "length", designCm: 40, workedStepCm: 0, gapCm: expect.closeTo(0.5, 9) as number },
    ]);
  });

  it("keeps the counts that a tester reported, and what they answered a correction with", () => {
    const bea = reader("bea", { bust: 100 }, { worked: { width: 95 }, confirmedCounts: ["width"] });
    const [found] = combined(revised, [earlier([bea])]).call.testers;
    expect(found).toMatchObject({ worked: { width: 95, height: 100 }, confirmedCounts: ["width"] });
  });

  it("gives the same cells as one call in which everybody reported what they worked", () => {
    const olds = [101, 102, 100.4].map((bust, index) => reader(`old-${index}`, { bust, length: 40.2 }));
    const news = [93, 94].map((bust, index) => reader(`new-${index}`, { bust, length: 39.8 }));
    const asOne = callDocument(
      [...news, ...olds.map((tester) => ({ ...tester, worked: { width: 98, height: 100 } }))],
      { pattern: revised },
    );
    expect(gaps(combined(revised, [earlier(olds)], news).call).cells).toEqual(gaps(asOne).cells);
  });

  it("leaves readings out that are made of a count which the earlier garment did not have", () => {
    const [bust, length] = before.measurements;
    if (bust === undefined || length === undefined) throw new Error("the pattern has two measurements");
    const border = { id: "border", label: "Border", fabric: "main", direction: "rows" } as const;
    const longer = patternDocument({
      counts: [...before.counts, border],
      measurements: [bust, { ...length, terms: [...length.terms, { times: 1, count: "border" }] }],
      grading: { ...before.grading, border: { small: 10, large: 10 } },
    });
    const { call, leftOut } = combined(longer, [
      earlier([reader("bea", { bust: 100, length: 41 }), reader("cleo", { length: 41 }, { swatches: [] })]),
    ]);
    expect(call.testers.map(({ id, readings }) => [id, readings.map(({ measurement }) => measurement)])).toEqual([
      ["bea", ["bust"]],
    ]);
    expect(leftOut).toEqual([
      { tester: "cleo", message: "Nothing that they reported can be compared with the new revision." },
    ]);
  });

  it.each<[string, Partial<PatternDocument>]>([
    ["another fabric", { counts: before.counts.map((count) => ({ ...count, fabric: "rib" })) }],
    ["another direction", { counts: before.counts.map((count) => ({ ...count, direction: "rows" as const })) }],
    ["half instead of all round", { measurements: before.measurements.map(({ girth: _girth, ...rest }) => rest) }],
  ])("does not compare a girth that was worked or measured otherwise: %s", (_what, change) => {
    const rib = { id: "rib", label: "Rib", toolMm: 3, gauge: { stitches: 22, rows: 30 } };
    const pattern = patternDocument({ fabrics: [...before.fabrics, rib], ...change });
    const [found] = combined(pattern, [earlier([reader("bea", { bust: 100, length: 40 })])]).call.testers;
    expect(found?.readings.map(({ measurement }) => measurement)).not.toContain("bust");
  });

  it("leaves a report of a size that is gone out by name, and words on fit out of all", () => {
    const [small] = before.sizes;
    if (small === undefined) throw new Error("the pattern has two sizes");
    const onlySmall = patternDocument({ sizes: [small], grading: { width: { small: 90 }, height: { small: 100 } } });
    const { call, leftOut } = combined(onlySmall, [
      earlier([
        reader("bea", { bust: 120 }, { size: "large" }),
        reader("cleo", { bust: 100 }, { fit: [{ area: "bust", scale: -1 }], prefers: { bust: 0 } }),
      ]),
    ]);
    expect(leftOut).toEqual([{ tester: "bea", message: "They made size L, which the new revision does not have." }]);
    expect(call.testers.map(({ id }) => id)).toEqual(["cleo"]);
    expect(call.testers[0]).not.toHaveProperty("fit");
    expect(call.testers[0]).not.toHaveProperty("prefers");
  });

  it("takes yarn over only where every stitch of a piece was worked then", () => {
    const yarns = [{ id: "wool", label: "Wool", metresPerBall: 200, gramsPerBall: 50 }];
    const piece = (rows: string) => ({
      ...{ id: "body", label: "Body", fabric: "main", made: 2, yarn: "wool" },
      sections: [{ from: "width", to: "width", rows }],
    });
    const garment = (rows: string) => patternDocument({ pieces: [piece(rows)] }).garment;
    const used = [{ yarn: "wool", grams: 300, metresPer100g: 400 }];
    const then = { ...before, yarns, garment: garment("height") };
    const calls = [earlier([reader("bea", { bust: 100 }, { yarn: used })], then)];
    expect(combined({ ...revised, yarns, garment: garment("height") }, calls).call.testers[0]?.yarn).toEqual(used);
    const hem = { id: "hem", label: "Hem", fabric: "main", direction: "rows" } as const;
    const counts = [...before.counts, hem];
    const grading = { ...revised.grading, hem: { small: 5, large: 5 } };
    const hemmed = { ...revised, yarns, counts, grading, garment: garment("hem") };
    expect(combined(hemmed, calls).call.testers[0]?.yarn).toEqual([]);
  });

  it("tells testers of several calls apart", () => {
    const calls = [earlier([reader("ana", { bust: 100 })]), earlier([reader("ana", { bust: 101 }), reader("bea", {})])];
    const { call } = combined(revised, calls, [reader("ana", { bust: 92 })]);
    expect(call.testers.map(({ id }) => id)).toEqual(["ana", "ana-2", "ana-3", "bea"]);
  });
});

describe("parseCall", () => {
  const faultsOf = (call: unknown) => {
    const parsed = parseCall(call);
    return parsed.ok ? [] : parsed.faults;
  };

  it("reads earlier calls, and says where one of them is faulty", () => {
    const good = callDocument([], { format: CALL_FORMAT_2, calls: [earlier([reader("bea", { bust: 100 })])] });
    expect(faultsOf(good)).toEqual([]);
    const odd = earlier([reader("bea", { neck: 40, bust: 5_000 }, { size: "huge" })]);
    expect(faultsOf({ ...good, calls: [earlier([]), odd] }).map(({ path }) => path)).toEqual([
      "calls[1].testers[0].size",
      "calls[1].testers[0].readings[0].measurement",
      "calls[1].testers[0].readings[1].cm",
    ]);
  });

  it("refuses them in a call@1, and calls before calls", () => {
    const calls = [earlier([])];
    expect(faultsOf(callDocument([], { calls }))).toEqual([{ path: "calls", says: "belongs to “sizewright/call@2”." }]);
    const nested = callDocument([], { format: CALL_FORMAT_2, calls: [{ ...earlier([]), calls } as EarlierCall] });
    expect(faultsOf(nested)).toEqual([{ path: "calls[0].calls", says: expect.any(String) as string }]);
  });
});
