import { describe, expect, it } from "vitest";
import type { ApplicantsDocument } from "@/engine/pattern";
import { fitInSize, placeApplicants } from "@/engine/places";
import { applicant, applicantsDocument } from "../../factories/applicants";
import { patternDocument } from "../../factories/pattern";

function placed(document: ApplicantsDocument) {
  const answer = placeApplicants(document);
  if (answer.status === "faults") throw new Error(answer.faults.map(({ says }) => says).join());
  return answer;
}

/** Who stands where, `a:small b:large`. */
function standing(document: ApplicantsDocument): string {
  return placed(document)
    .placed.map(({ applicant: id, size }) => `${id}:${size}`)
    .join(" ");
}

const places = (small: [number, number], medium: [number, number], large: [number, number]) => ({
  small: { least: small[0], wanted: small[1] },
  medium: { least: medium[0], wanted: medium[1] },
  large: { least: large[0], wanted: large[1] },
});

describe("misfit and reach", () => {
  const fit = (bust: number, size: string, change: Parameters<typeof applicant>[2] = {}) =>
    fitInSize({ document: applicantsDocument(), applicant: applicant("a", bust, change), size });

  it("counts a body in half distances to the neighbouring size on its own side", () => {
    // By hand: M's neighbours are 8 cm below and 10 above, so its halves are 4 and 5.
    expect(fit(94, "medium")).toMatchObject({ misfit: 1, differences: [{ cm: -4, d: -1, beyondCm: 0 }] });
    expect(fit(103, "medium")).toMatchObject({ misfit: 1, differences: [{ cm: 5, d: 1 }] });
    // The outermost sizes have one neighbour, which serves for both sides.
    expect(fit(86, "small")).toMatchObject({ misfit: 1, differences: [{ cm: -4, d: -1 }] });
    expect(fit(118, "large")).toMatchObject({ misfit: 4, differences: [{ cm: 10, d: 2 }], isWithinReach: true });
  });

  it("ends reach at two half distances", () => {
    expect(fit(119, "large")).toMatchObject({ isWithinReach: false, differences: [{ beyondCm: 1 }] });
    expect(fit(106, "small")).toMatchObject({ isWithinReach: false, differences: [{ beyondCm: 8 }] });
  });

  it("adds a quarter for each preferred size, and half of the share of dropouts", () => {
    const prefers = ["large", "medium"];
    expect(fit(98, "large", { prefers }).misfit).toBe(4);
    expect(fit(98, "medium", { prefers }).misfit).toBe(0.25);
    expect(fit(98, "small", { prefers }).misfit).toBe(4.5);
    // By hand: 0.5 × 3 ÷ (1 + 3 + 2).
    expect(fit(98, "medium", { record: { finished: 1, dropped: 3 } }).misfit).toBe(0.25);
  });

  it("uses 4 cm if sizes are less than 1 cm apart, and if there is one size", () => {
    const sizes = [
      { id: "one", label: "1", body: { bust: 89.1, neck: 30 } },
      { id: "two", label: "2", body: { bust: 90.1, neck: 30.9 } },
    ];
    const two = { pattern: patternDocument({ sizes }), fitBy: ["bust", "neck"] };
    const between = { id: "a", body: { bust: 90.1, neck: 32 } };
    // By hand: 1 cm is not under 1, whatever doubles make of it: 1 ÷ ½; 2 ÷ 4.
    const inOne = fitInSize({ document: two, applicant: between, size: "one" });
    expect(inOne.differences[0]?.d).toBeCloseTo(2, 12);
    expect(inOne.differences[1]?.d).toBe(0.5);
    expect(inOne.isWithinReach).toBe(true);
    const one = { pattern: patternDocument({ sizes: sizes.slice(0, 1) }), fitBy: ["bust"] };
    expect(fitInSize({ document: one, applicant: { id: "a", body: { bust: 97.1 } }, size: "one" }).misfit).toBe(4);
  });

  it("tells of every size, out of reach and not accepted too", () => {
    expect(fit(90, "large", { accepts: ["small"] })).toMatchObject({ isWithinReach: false, isAccepted: false });
  });
});

describe("the assignment of sizes", () => {
  it("fills the minimum of a size before it considers who fits better", () => {
    const applicants = [applicant("a", 94.1), applicant("b", 98)];
    const document = applicantsDocument({ places: places([1, 1], [0, 2], [0, 0]), applicants });
    expect(standing(document)).toBe("a:small b:medium");
    expect(placed(document).objective).toMatchObject({ leastFilled: 1, filled: 2 });
  });

  it("fills more places rather than fit one better", () => {
    // b is exact in M, but only b can be assigned L too.
    const applicants = [applicant("a", 92), applicant("b", 98)];
    expect(standing(applicantsDocument({ places: places([0, 0], [0, 1], [0, 1]), applicants }))).toBe(
      "a:medium b:large",
    );
  });

  it("places the earlier of two who are alike", () => {
    const applicants = [applicant("a", 97), applicant("b", 99), applicant("c", 97)];
    const document = applicantsDocument({ places: places([0, 0], [0, 1], [0, 0]), applicants });
    // By hand: b lies nearer in half distances, for above M half is 5 cm.
    expect(standing(document)).toBe("b:medium");
    const alike = { ...document, applicants: [applicant("a", 97), applicant("c", 97)] };
    expect(standing(alike)).toBe("a:medium");
  });

  it("knows equal sums for equal where rounding makes them differ", () => {
    // By hand, in ninths with halves of 3: a in S and b in M 16 + 34, a in M and b in S 40 + 10.
    const sizes = [
      { id: "s", label: "S", body: { bust: 96, hip: 106 } },
      { id: "m", label: "M", body: { bust: 102, hip: 112 } },
    ];
    const document = applicantsDocument({
      pattern: patternDocument({ sizes }),
      fitBy: ["bust", "hip"],
      places: { s: { least: 0, wanted: 1 }, m: { least: 0, wanted: 1 } },
      applicants: [
        { id: "a", body: { bust: 100, hip: 106 } },
        { id: "b", body: { bust: 97, hip: 109 } },
      ],
    });
    expect(standing(document)).toBe("a:s b:m");
    expect(placed(document).objective.misfit).toBeCloseTo(50 / 9, 12);
    expect(standing({ ...document, applicants: document.applicants.toReversed() })).toBe("b:s a:m");
  });

  it("keeps a lock against reach and acceptance, and counts it towards the capacity", () => {
    const applicants = [applicant("a", 90), applicant("b", 140, { locked: "small", accepts: [] })];
    const answer = placed(applicantsDocument({ places: places([1, 1], [0, 0], [0, 0]), applicants }));
    expect(answer.placed).toMatchObject([{ applicant: "b", size: "small", reason: { kind: "locked" } }]);
    expect(answer.objective).toMatchObject({ leastFilled: 1, filled: 1, misfit: 156.25 });
  });

  it("assigns nobody if there are no applicants, and nobody if there are no spots", () => {
    const empty = placed(applicantsDocument({ places: places([2, 2], [0, 0], [0, 0]) }));
    expect(empty).toEqual({
      status: "optimal",
      placed: [],
      waiting: [],
      short: [{ size: "small", missing: 2, nearest: [] }],
      objective: { leastFilled: 0, filled: 0, misfit: 0 },
    });
    const none = placed(applicantsDocument({ places: {}, applicants: [applicant("a", 90)] }));
    expect(none.waiting).toEqual([{ applicant: "a", why: "No size has a spot.", reason: { kind: "no-places" } }]);
  });
});

describe("why", () => {
  const why = (document: ApplicantsDocument, id: string) => {
    const { placed: here, waiting } = placed(document);
    return [...here, ...waiting].find(({ applicant: one }) => one === id)?.why;
  };

  it("explains why an applicant was assigned a size", () => {
    const applicants = [
      applicant("nearest", 99),
      applicant("only", 83),
      applicant("wish", 104, { prefers: ["large"] }),
      applicant("full", 98, { record: { finished: 0, dropped: 2 } }),
      applicant("locked", 112, { locked: "large" }),
    ];
    const document = applicantsDocument({ places: places([0, 2], [0, 1], [0, 2]), applicants });
    expect(why(document, "nearest")).toBe(
      "Of the sizes open to them, M is nearest to their body. Their bust is 1 cm above the size's.",
    );
    expect(why(document, "only")).toBe(
      "S is the only size with spots that is within reach and that they accept. Their bust is 7 cm below the size's.",
    );
    expect(why(document, "wish")).toBe(
      "L is nearest to their body, and their first choice. Their bust is 4 cm below the size's.",
    );
    expect(why(document, "full")).toBe(
      "M would fit them better, but its spots are assigned to others. Of the remaining sizes, S fits them best. Their bust is 8 cm above the size's.",
    );
    expect(why(document, "locked")).toBe("The designer assigned L. Their bust is 4 cm above the size's.");
  });

  it("says if a size would fall below its minimum without the applicant", () => {
    const document = applicantsDocument({ places: places([1, 1], [0, 2], [0, 0]), applicants: [applicant("a", 97)] });
    expect(why(document, "a")).toBe(
      "M would fit them better, but S would fall below its minimum without them. Of the remaining sizes, S fits them best. Their bust is 7 cm above the size's.",
    );
  });

  it("explains why an applicant is on the waiting list", () => {
    const applicants = [
      applicant("first", 98, { accepts: ["medium"] }),
      applicant("full", 98.5, { accepts: ["medium"] }),
      applicant("excluded", 98, { excluded: true }),
      applicant("none", 98, { accepts: [] }),
      applicant("far", 123),
      applicant("refuses", 90.5, { accepts: ["large"] }),
      applicant("unwanted", 83, { accepts: ["small"] }),
    ];
    const document = applicantsDocument({ places: places([0, 0], [1, 1], [2, 2]), applicants });
    expect(why(document, "full")).toBe("Every spot in M, the only size open to them, is assigned to someone else.");
    expect(why(document, "excluded")).toBe("Excluded by the designer.");
    expect(why(document, "none")).toBe("They accept no size.");
    expect(why(document, "far")).toBe(
      "No size with spots that they accept is within reach; the nearest is L. Their bust is 15 cm above the size's, 5 cm out of reach.",
    );
    expect(why(document, "refuses")).toBe(
      "No size with spots that they accept is within reach; the nearest is L. Their bust is 17.5 cm below the size's, 7.5 cm out of reach. M is within reach, but not accepted by them.",
    );
    expect(why(document, "unwanted")).toBe(
      "No tester is needed in a size that they accept. S is within reach, but no tester is needed there.",
    );
  });

  it("names the nearest applicants for a size below its minimum, and what would have to change", () => {
    const applicants = [
      applicant("refuses", 108, { accepts: ["medium"] }),
      applicant("placed", 98),
      applicant("farther", 130),
      applicant("far", 119.5),
      applicant("locked", 107, { locked: "small" }),
      applicant("excluded", 108, { excluded: true }),
    ];
    const [short] = placed(applicantsDocument({ places: places([1, 1], [1, 1], [3, 3]), applicants })).short;
    expect(short).toMatchObject({ size: "large", missing: 2 });
    expect(short?.nearest.map(({ applicant: id, why: says }) => `${id}: ${says}`)).toEqual([
      "refuses: Their bust is the size's. They do not accept this size. They have M, which would then fall below its minimum.",
      "locked: Their bust is 1 cm below the size's. The designer assigned S, which would then fall below its minimum.",
      "far: Their bust is 11.5 cm above the size's, 1.5 cm out of reach.",
    ]);
  });
});
