import { describe, expect, it } from "vitest";
import { parseApplicants, type ApplicantsDocument } from "@/engine/pattern";
import { minCostAssignment, findReplacements, fitInSize, placeApplicants } from "@/engine/places";
import { applicant, applicantsDocument } from "../../factories/applicants";

function faults(document: unknown): string[] {
  const parsed = parseApplicants(document);
  return parsed.ok ? [] : parsed.faults.map(({ path, says }) => `${path}: ${says}`);
}

function lockFaults(document: ApplicantsDocument): string[] {
  const answer = placeApplicants(document);
  return answer.status === "faults" ? answer.faults.map(({ path, says }) => `${path}: ${says}`) : [];
}

describe("what places refuses", () => {
  it("refuses more locks than places, at the first that finds none", () => {
    const applicants = [
      applicant("a", 90, { locked: "small" }),
      applicant("b", 98, { locked: "large" }),
      applicant("c", 90, { locked: "small" }),
      applicant("d", 90, { locked: "small" }),
    ];
    const places = { small: { least: 0, wanted: 1 } };
    expect(lockFaults(applicantsDocument({ applicants, places }))).toEqual([
      "applicants[2].locked: 3 applicants are locked in S, where 1 tester is wanted: want more there, or take a lock away.",
      "applicants[1].locked: 1 applicant is locked in L, where no tester is wanted: want more there, or take a lock away.",
    ]);
  });

  it("lets more be locked than are wanted, as far as the most, and assigns nobody beyond what is wanted", () => {
    const lock = { locked: "small" };
    const applicants = [applicant("a", 90, lock), applicant("b", 90, lock), applicant("c", 90)];
    const places = { small: { least: 0, wanted: 1, most: 2 } };
    const answer = placeApplicants(applicantsDocument({ applicants, places }));
    expect(answer).toMatchObject({ placed: [{ applicant: "a" }, { applicant: "b" }], waiting: [{ applicant: "c" }] });
    const more = [...applicants, applicant("d", 90, lock)];
    expect(lockFaults(applicantsDocument({ applicants: more, places }))).toEqual([
      "applicants[3].locked: 3 applicants are locked in S, where at most 2 testers are wanted: want more there, or take a lock away.",
    ]);
    const few = { small: { least: 1, wanted: 3, most: 2 } };
    expect(faults(applicantsDocument({ applicants, places: few }))).toEqual([
      "places.small.most: is 2, fewer than the 3 wanted.",
    ]);
  });

  it("refuses ids that do not exist, bodies that lack what decides, and a lock beside an exclusion", () => {
    const applicants = [
      applicant("a", 90, { accepts: ["huge"], prefers: ["tiny"], locked: "none" }),
      { id: "b", body: {} },
      applicant("c", 90, { locked: "small", excluded: true }),
      applicant("c", 90),
    ];
    const places = { huge: { least: 1, wanted: 1 }, small: { least: 2, wanted: 1 } };
    expect(faults(applicantsDocument({ applicants, places }))).toEqual([
      "places.huge: there is no size “huge”.",
      "places.small.least: is 2, more than the 1 wanted.",
      "applicants[3].id: “c” appears twice in this list.",
      "applicants[0].accepts[0]: there is no size “huge”.",
      "applicants[0].prefers[0]: there is no size “tiny”.",
      "applicants[0].locked: there is no size “none”.",
      "applicants[1].body.bust: is missing; the fit depends on it.",
      "applicants[2]: is both locked and excluded.",
    ]);
    expect(faults(applicantsDocument({ fitBy: ["wing"] }))).toContain("fitBy[0]: there is no body measurement “wing”.");
  });

  it("accepts 20 000 applicants, and not one more", () => {
    const applicants = Array.from({ length: 20_000 }, (_, index) => applicant(`a-${index}`, 80 + (index % 40)));
    const places = { medium: { least: 100, wanted: 4000 } };
    const document = applicantsDocument({ applicants, places });
    expect(faults(document)).toEqual([]);
    expect(placeApplicants(document)).toMatchObject({ objective: { leastFilled: 100, filled: 4000 } });
    const more = { ...document, applicants: [...applicants, applicant("one-more", 90)] };
    expect(faults(more)).toEqual(["applicants: must hold at most 20000 applicants."]);
  }, 120_000);

  it("takes wishes without end, whose misfits are large", () => {
    const prefers = [...Array.from({ length: 10_000 }, () => "large"), "small", "medium"];
    const applicants = [applicant("a", 90, { prefers }), applicant("b", 98)];
    const places = { small: { least: 0, wanted: 1 }, medium: { least: 0, wanted: 1 } };
    const answer = placeApplicants(applicantsDocument({ applicants, places }));
    expect(answer).toMatchObject({ placed: [{ size: "small", misfit: 2500 }, { size: "medium" }] });
  });

  it("throws at what no parsed document holds", () => {
    const document = applicantsDocument({ applicants: [applicant("a", 90)] });
    expect(() => fitInSize({ document, applicant: applicant("a", 90), size: "huge" })).toThrow(RangeError);
    expect(() => findReplacements({ document, size: "small", waiting: ["nobody"] })).toThrow(RangeError);
    const sizes = [{ min: 0, capacity: 1 }];
    for (const cost of [0.5, Number.NaN, -Infinity, 2 ** 53])
      expect(() => minCostAssignment({ sizes, costs: Float64Array.of(cost), slack: 0 })).toThrow(RangeError);
  });
});
