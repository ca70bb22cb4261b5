import { describe, expect, it } from "vitest";
import type { AskedOfApplicants, TypedApplication } from "@/features/applications/apply-form";
import { askedOfApplicants } from "@/features/applications/asked-of-applicants";
import { readApplyForm } from "@/features/applications/read-apply-form";
import { openingDocument } from "../../factories/opening";
import { patternDocument } from "../../factories/pattern";

const PLACES = { small: { least: 1, wanted: 2 }, large: { least: 1, wanted: 2 } };

/** Sizes for a bust of 90 and 110 cm. */
const ASKED: AskedOfApplicants = askedOfApplicants({
  pattern: patternDocument(),
  places: PLACES,
  document: openingDocument(),
  agreement: { version: 1, text: "" },
});

function typed(change: Readonly<Record<string, string | readonly string[]>> = {}): TypedApplication {
  const whole = {
    ...{ name: "Maja", email: "Maja@Example.org ", unit: "cm", terms: "uk", experience: "some" },
    ...{ "body.bust": "97", agrees: "yes", adult: "yes", ...change },
  };
  return Object.fromEntries(
    Object.entries(whole).map(([field, value]) => [field, typeof value === "string" ? [value] : value]),
  );
}

function read(change: Parameters<typeof typed>[0] = {}) {
  return readApplyForm(typed(change), ASKED);
}

describe("an application that is whole", () => {
  it("is read as it was meant, and its measurements are kept as typed", () => {
    expect(read({ accepts: ["large", "small"], "prefers.0": "large", forAnother: "yes", yarn: " wool " })).toEqual({
      ok: true,
      application: {
        ...{ name: "Maja", email: "maja@example.org", measurements: { bust: 97 }, typed: { bust: "97" } },
        document: {
          ...{ accepts: ["small", "large"], prefers: ["large"], forAnother: true, yarn: "wool", tool: "" },
          ...{ unit: "cm", terms: "uk", experience: "some", handle: "", pastWork: "" },
        },
      },
    });
  });

  it("has lengths in the unit chosen, but for those with a unit behind them", () => {
    // By hand: 1 in = 2.54 cm, so 38.5 in are 97.79 cm and 12 3/8 in are 31.4325 cm.
    const cases = [
      ["38,5", "in", 97.79],
      ["38 1/2", "in", 97.79],
      ["97 cm", "in", 97],
      ["38½ in", "cm", 97.79],
      ["965 mm", "in", 96.5],
    ] as const;
    for (const [bust, unit, cm] of cases)
      expect(read({ "body.bust": bust, unit }), bust).toMatchObject({
        application: { measurements: { bust: expect.closeTo(cm, 9) }, typed: { bust } },
      });
    const small = { ...ASKED, body: ASKED.body.map((one) => ({ ...one, fromCm: 28, toCm: 40 })) };
    expect(readApplyForm(typed({ "body.bust": "12 3/8 in" }), small)).toMatchObject({
      application: { measurements: { bust: expect.closeTo(31.4325, 9) } },
    });
  });

  it("with no size ticked takes any within reach", () => {
    expect(read()).toMatchObject({ application: { document: { accepts: null, prefers: [] } } });
  });
});

describe("what is hard to believe", () => {
  it("is asked once, with the other unit where that would fit", () => {
    const doubted = read({ "body.bust": "40" });
    expect(doubted).toMatchObject({ ok: false, faults: {} });
    expect(doubted.ok ? {} : doubted.doubts).toEqual({
      "body.bust": [
        "This was read as 40 cm. Is that in inches? Then write “40 in”. If it is right as it stands, send the form again: you will not be asked twice.",
      ],
    });
    expect(read({ "body.bust": "100", unit: "in" })).toMatchObject({
      doubts: { "body.bust": [expect.stringContaining("Is that in centimetres?")] },
    });
    expect(read({ "body.bust": "300" })).toMatchObject({
      doubts: { "body.bust": [expect.stringContaining("The sizes of this pattern are for bust 90.0 cm to 110.0 cm.")] },
    });
    expect(read({ "body.bust": "40", asked: ["bust"] })).toMatchObject({ application: { measurements: { bust: 40 } } });
  });

  it("is no fault of somebody beyond the sizes", () => {
    // 0.7 × 90 = 63 and 1.4 × 110 = 154.
    for (const bust of ["63", "154"]) expect(read({ "body.bust": bust }).ok, bust).toBe(true);
  });
});

describe("what is missing or wrong", () => {
  it("is told field by field, all at once", () => {
    const nothing = readApplyForm({}, ASKED);
    expect(nothing.ok ? [] : Object.keys(nothing.faults).sort()).toEqual(
      ["adult", "agrees", "body.bust", "email", "experience", "name", "terms", "unit"].sort(),
    );
  });

  it("is a length that is none, a size chosen twice or not ticked, an address that is none, or too long a text", () => {
    const cases: readonly (readonly [string, Parameters<typeof typed>[0]])[] = [
      ["body.bust", { "body.bust": "much" }],
      ["body.bust", { "body.bust": "-90" }],
      ["body.bust", { "body.bust": "2000" }],
      ["prefers.1", { "prefers.0": "small", "prefers.1": "small" }],
      ["prefers.0", { accepts: ["small"], "prefers.0": "large" }],
      ["email", { email: "maja" }],
      ["name", { name: "x".repeat(1_001) }],
      ["name", { name: "Ma\u0000ja" }],
      ["pastWork", { pastWork: "x".repeat(5_001) }],
      ["experience", { experience: "constructor" }],
    ];
    for (const [field, change] of cases) {
      const told = read(change);
      expect(told.ok ? {} : Object.keys(told.faults), JSON.stringify(change).slice(0, 60)).toEqual([field]);
    }
  });

  it("is no name of 300 characters, in any writing", () => {
    for (const name of ["x".repeat(300), "نور".repeat(100), "🧶".repeat(150)])
      expect(read({ name })).toMatchObject({ application: { name } });
  });

  it("is no size that the call does not have: it is passed over", () => {
    const accepts = ["constructor", "small"];
    expect(read({ accepts, "prefers.0": "__proto__" })).toMatchObject({
      application: { document: { accepts: ["small"], prefers: [] } },
    });
  });
});
