import { describe, expect, it } from "vitest";
import type {
  AskedOfApplicants,
  TypedApplication,
} from "../../../../../src/features/recruiting/applications/apply/apply-answer";
import { askedOfApplicants } from "../../../../../src/features/recruiting/applications/apply/asked-of-applicants";
import { readApplyForm } from "../../../../../src/features/recruiting/applications/apply/read-apply-form";
import { listingDocument } from "../../../../factories/listing";
import { patternDocument } from "../../../../factories/pattern";

const PLACES = { small: { least: 1, wanted: 2 }, large: { least: 1, wanted: 2 } };

/** Sizes for a bust of 90 and 110 cm. */
const ASKED: AskedOfApplicants = askedOfApplicants({
  pattern: patternDocument(),
  places: PLACES,
  document: listingDocument(),
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

describe("a complete application", () => {
  it("is read as meant, and its measurements are also stored as typed", () => {
    expect(
      read({ accepts: ["large", "small"], "prefers.0": "large", forAnother: "yes", wearer: "child", yarn: " wool " }),
    ).toEqual({
      ok: true,
      application: {
        ...{ name: "Maja", email: "maja@example.org", measurements: { bust: 97 }, typed: { bust: "97" } },
        document: {
          ...{ accepts: ["small", "large"], prefers: ["large"], forAnother: true, wearer: "child" },
          ...{ yarn: "wool", tool: "" },
          ...{ unit: "cm", terms: "uk", experience: "some", handle: "", pastWork: "" },
        },
      },
    });
  });

  it("for somebody else says who wears it, and that they or their guardian agree", () => {
    expect(read({ forAnother: "yes" })).toMatchObject({
      ok: false,
      faults: { wearer: [expect.stringContaining("Choose")] },
    });
    expect(read({ wearer: "child" })).toMatchObject({ ok: true, application: { document: { forAnother: false } } });
    expect(read({ wearer: "child" })).not.toHaveProperty("application.document.wearer");
  });

  it("has lengths in the chosen unit, except those typed with a unit", () => {
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

  it("with no size ticked accepts any that fits", () => {
    expect(read()).toMatchObject({ application: { document: { accepts: null, prefers: [] } } });
  });
});

describe("an unusual measurement", () => {
  it("is questioned once, with the other unit if that would fit", () => {
    const doubted = read({ "body.bust": "40" });
    expect(doubted).toMatchObject({ ok: false, faults: {} });
    expect(doubted.ok ? {} : doubted.doubts).toEqual({
      "body.bust": [
        "You entered 40 cm. Did you mean inches? Then enter “40 in”. If your number is correct, just send the form again: you will not be asked twice.",
      ],
    });
    expect(read({ "body.bust": "100", unit: "in" })).toMatchObject({
      doubts: { "body.bust": [expect.stringContaining("Did you mean centimetres?")] },
    });
    expect(read({ "body.bust": "300" })).toMatchObject({
      doubts: { "body.bust": [expect.stringContaining("This pattern’s sizes are made for bust 90.0 cm to 110.0 cm.")] },
    });
    expect(read({ "body.bust": "40", asked: ["bust"] })).toMatchObject({ application: { measurements: { bust: 40 } } });
  });

  it("is not questioned for somebody a little outside the sizes", () => {
    // 0.7 × 90 = 63 and 1.4 × 110 = 154.
    for (const bust of ["63", "154"]) expect(read({ "body.bust": bust }).ok, bust).toBe(true);
  });
});

describe("what is missing or wrong", () => {
  it("is listed field by field, all at once", () => {
    const nothing = readApplyForm({}, ASKED);
    expect(nothing.ok ? [] : Object.keys(nothing.faults).sort()).toEqual(
      ["adult", "agrees", "body.bust", "email", "experience", "name", "terms", "unit"].sort(),
    );
  });

  it("covers faulty lengths, a size chosen twice or not ticked, a faulty address and too long a text", () => {
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
      const result = read(change);
      expect(result.ok ? {} : Object.keys(result.faults), JSON.stringify(change).slice(0, 60)).toEqual([field]);
    }
  });

  it("does not include a name of 300 characters, in any script", () => {
    for (const name of ["x".repeat(300), "نور".repeat(100), "🧶".repeat(150)])
      expect(read({ name })).toMatchObject({ application: { name } });
  });

  it("does not include a size that the call does not have: it is ignored", () => {
    const accepts = ["constructor", "small"];
    expect(read({ accepts, "prefers.0": "__proto__" })).toMatchObject({
      application: { document: { accepts: ["small"], prefers: [] } },
    });
  });
});
