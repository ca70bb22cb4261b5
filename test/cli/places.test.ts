import { describe, expect, it } from "vitest";
import { applicant, applicantsDocument } from "../factories/applicants";
import { bundledEngine } from "./run-engine";

const engine = await bundledEngine();
const places = (input: unknown) => engine(["places", "-"], JSON.stringify(input));

describe("the verb places", () => {
  it("prints who is placed, who waits and what is short, with the documented keys and no others", () => {
    const document = applicantsDocument({
      places: { small: { least: 1, wanted: 2 }, large: { least: 2, wanted: 2 } },
      applicants: [
        applicant("a", 91),
        applicant("b", 120),
        applicant("c", 108, { locked: "large" }),
        applicant("d", 90, { excluded: true }),
      ],
    });
    const { status, output, errors } = places(document);
    expect(errors).toBe("");
    expect(status).toBe(0);
    // By hand: S halves 4 cm, L halves 5; a lies 1 ÷ 4 above S and 17 ÷ 5 below L, b 12 ÷ 5 above L.
    const only = "is the only size with spots that is within reach and that they accept.";
    expect(JSON.parse(output)).toEqual({
      placed: [
        { applicant: "a", size: "small", misfit: 0.0625, why: `S ${only} Their bust is 1 cm above the size's.` },
        { applicant: "c", size: "large", misfit: 0, why: "The designer assigned L. Their bust is the size's." },
      ],
      waiting: [
        {
          applicant: "b",
          why: "No size with spots that they accept is within reach; the nearest is L. Their bust is 12 cm above the size's, 2 cm out of reach.",
        },
        { applicant: "d", why: "Excluded by the designer." },
      ],
      short: [
        {
          size: "large",
          missing: 1,
          nearest: [
            {
              applicant: "b",
              misfit: expect.closeTo(5.76, 12),
              why: "Their bust is 12 cm above the size's, 2 cm out of reach.",
            },
            {
              applicant: "a",
              misfit: expect.closeTo(11.56, 12),
              why: "Their bust is 17 cm below the size's, 7 cm out of reach. They have S, which would then fall below its minimum.",
            },
          ],
        },
      ],
      objective: { leastFilled: 2, filled: 2, misfit: 0.0625 },
    });
  }, 60_000);

  it("fills the smallest and the largest size before those between, where that is asked for", () => {
    const least = { least: 1, wanted: 1 };
    const document = applicantsDocument({
      places: { small: least, medium: least, large: least },
      applicants: [applicant("a", 97)],
    });
    // By hand: a lies 1 ÷ 4 below M, 7 ÷ 4 above S, and 11 ÷ 5 below L, which is out of reach.
    const sizeOf = (input: unknown) =>
      (JSON.parse(places(input).output) as { placed: { size: string }[] }).placed[0]?.size;
    expect(sizeOf(document)).toBe("medium");
    expect(sizeOf({ applicants: document, endsFirst: true })).toBe("small");
    expect(places({ applicants: { ...document, fitBy: ["wing"] }, endsFirst: true }).errors).toContain(
      "applicants.fitBy[0]: there is no body measurement “wing”.",
    );
  }, 60_000);

  it("leaves with 2 and nothing printed where locks are more than places", () => {
    const applicants = [applicant("a", 91, { locked: "small" }), applicant("b", 91, { locked: "small" })];
    expect(places(applicantsDocument({ applicants }))).toEqual({
      status: 2,
      output: "",
      errors:
        "applicants[1].locked: 2 applicants are locked in S, where 1 tester is wanted: want more there, or take a lock away.\n",
    });
  }, 60_000);
});
