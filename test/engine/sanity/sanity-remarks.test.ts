import { describe, expect, it } from "vitest";
import type { Fabric, PatternDocument } from "@/engine/pattern";
import { saltmarshPattern } from "../../../prisma/demo/saltmarsh-pattern";
import { patternDocument } from "../../factories/pattern";
import { bodies, fabricLike, kinds, measurement, remarks, withCounts } from "./counted-pattern";

it("has nothing to ask about the demonstration’s pattern, nor about one without counts yet", () => {
  expect(remarks(saltmarshPattern)).toEqual([]);
  expect(remarks({ ...saltmarshPattern, grading: {} })).toEqual([]);
  expect(remarks(patternDocument())).toEqual([]);
});

describe("a step between sizes", () => {
  const bust = measurement("bust", { girth: true, target: { body: "bust", easeCm: 10 } });

  it("is asked about where it is out of line with the body by more than two tolerances", () => {
    // By hand: 200 ÷ 2 = 100 to 246 ÷ 2 = 123: 23 where the body grows by 20.
    expect(remarks(withCounts({ bust: [200, 246] }, [bust]))).toEqual([
      {
        kind: "step-and-body",
        path: "measurements[0]",
        size: "large",
        says: "From S to L, “bust” grows by 23.0 cm while the body grows by 20.0 cm.",
      },
    ]);
  });

  it("is left alone at two tolerances, and where the table is flat", () => {
    expect(kinds(withCounts({ bust: [200, 244] }, [bust]))).toEqual([]);
    const back = { ...bust, girth: false, target: { body: "back", easeCm: 2 } };
    const flat = bodies({ bust: 90, back: 45.7 }, { bust: 110, back: 45.7 });
    expect(kinds(withCounts({ bust: [95, 96] }, [back], { sizes: flat }))).toEqual([]);
    expect(remarks(withCounts({ bust: [95, 85] }, [back], { sizes: flat })).map(({ says }) => says)).toEqual([
      "From S to L, “bust” shrinks by 5.0 cm while the body stays the same.",
    ]);
  });

  it("is seen in eases before there are counts", () => {
    const typo = { ...bust, target: { body: "bust", easeCm: { small: 5, large: 50 } } };
    expect(kinds(withCounts({ bust: [200, 246] }, [typo], { grading: {} }))).toEqual(["step-and-body"]);
  });
});

describe("a coarse repeat", () => {
  const bust = measurement("bust", { girth: true, toleranceCm: 2, target: { body: "bust", easeCm: 10 } });
  const repeating = (of: number, plus: number, change: Partial<PatternDocument> = {}) => {
    const counts = [
      { id: "bust", label: "Chest stitches", fabric: "main", direction: "stitches", repeat: { of, plus } },
    ] as const;
    return withCounts({ bust: [200, 240] }, [bust], { counts, grading: {}, ...change });
  };

  it("is asked about with the coarsest that would do", () => {
    /*
     * By hand: 200 and 240 stitches are wanted, within 2 cm = 4 stitches. Of 24, 192 (8 off) and 240: S fails. Of 23, 207
     * (7 off); of 22, 198 and 242, both 2 off.
     */
    expect(remarks(repeating(24, 0))).toEqual([
      {
        kind: "coarse-repeat",
        path: "counts[0].repeat.of",
        size: "small",
        says: "No multiple of 24 of “Chest stitches” brings “bust” within 2.0 cm of its target in S. A multiple of 22 does in every size.",
      },
    ]);
  });

  it("keeps the edge stitches in what it proposes", () => {
    // By hand, within 4 of 200 and 240: of 40, 203 and 243. Of 30, 213 and 243; down to 20, 203 and 243, one always fails.
    expect(kinds(repeating(40, 3))).toEqual([]);
    expect(remarks(repeating(30, 3))[0]?.says).toMatch(/^No multiple of 30 \+ 3 .* A multiple of 20 \+ 3 does/);
  });

  it("says where not even single stitches do", () => {
    const tight = [{ ...bust, toleranceCm: 0.1, target: { cm: { small: 100.25, large: 120 } } }];
    const pattern = repeating(1, 0, { measurements: tight });
    expect(remarks(pattern)).toEqual([
      {
        kind: "coarse-repeat",
        path: "counts[0]",
        size: "small",
        says: "No whole number of “Chest stitches” brings “bust” within 0.1 cm of its target in S. Not even single stitches can: widen the tolerance, or look at the target.",
      },
    ]);
  });

  it("is left alone where another count can make up for it, and where the count is locked", () => {
    const [one] = repeating(24, 0).counts;
    if (one === undefined) throw new Error("incomplete pattern");
    const both = { ...bust, terms: [...bust.terms, { times: 1, count: "other" }] };
    const counts = [one, { ...one, id: "other", repeat: { of: 2, plus: 0 } }];
    expect(kinds(repeating(24, 0, { counts, measurements: [both] }))).toEqual([]);
    expect(kinds(repeating(24, 0, { counts: [{ ...one, locked: { small: 192 } }] }))).toEqual([]);
  });
});

describe("a gauge", () => {
  const [bust, length] = patternDocument({ craft: "knitting" }).measurements;
  const only = (change: Partial<Fabric>) => {
    if (bust === undefined || length === undefined) throw new Error("incomplete pattern");
    const measurements = [bust, length].map((one) => ({ ...one, target: { cm: { small: 40, large: 50 } } }));
    const pattern = patternDocument({ ...fabricLike(change), grading: {}, measurements });
    return remarks(pattern).flatMap(({ kind, path, says }) => (kind === "gauge" ? [`${path}: ${says}`] : []));
  };

  it.each([
    [
      { gauge: { stitches: 20, rows: 25, overCm: 1 } },
      /^fabrics\[0\]\.gauge\.stitches: “Main” has 20 stitches over 1\.0 cm/,
    ],
    [{ gauge: { stitches: 20, rows: 250 } }, /^fabrics\[0\]\.gauge\.rows: “Main” has 250 rows over 10\.0 cm/],
    [{ gauge: { stitches: 20, rows: 1.9 } }, /^fabrics\[0\]\.gauge\.rows: .* hardly have/],
    [{ toolMm: 400 }, /^fabrics\[0\]\.toolMm: .*hardly any such/],
    [{ toolMm: 20 }, /^fabrics\[0\]\.toolMm: .*do not go together/],
    // 5 1/2 stitches to the inch, typed for ten centimetres.
    [{ gauge: { stitches: 5.5, rows: 7 } }, /^fabrics\[0\]\.toolMm: .*do not go together/],
  ])("is questioned beyond what hands can work: %o", (change, says) => {
    expect(only(change)).toEqual([expect.stringMatching(says)]);
  });

  it.each([
    { toolMm: 1.5, gauge: { stitches: 40, rows: 56 } },
    { toolMm: 25, gauge: { stitches: 4, rows: 5 } },
    { toolMm: 2, gauge: { stitches: 36, rows: 44 } },
    { toolMm: 8, gauge: { stitches: 14, rows: 18 } },
    { toolMm: 5, gauge: { stitches: 17, rows: 4.5 } },
    { toolMm: 4, gauge: { stitches: 22, rows: 44, overCm: 10.16 } },
  ])("is not questioned if hands can work it: %o", (change) => {
    expect(only(change)).toEqual([]);
  });
});

describe("the order of sizes", () => {
  it("is asked about where a size is not larger than the one before", () => {
    const sizes = [...bodies({ bust: 90 }, { bust: 90 }), { id: "odd", label: "XL", body: { bust: 80 } }];
    const pattern = patternDocument({ sizes, measurements: [], counts: [], grading: {} });
    expect(remarks(pattern)).toEqual([
      {
        kind: "size-order",
        path: "sizes[1].body.bust",
        size: "large",
        says: "S and L are both for “bust” of 90.0 cm: nobody can choose between them by it.",
      },
      {
        kind: "size-order",
        path: "sizes[2].body.bust",
        size: "odd",
        says: "XL is for “bust” of 80.0 cm and stands after L of 90.0 cm. Sizes stand smallest first.",
      },
    ]);
  });

  it("is left alone where they rise", () => {
    expect(kinds(patternDocument())).toEqual([]);
  });
});
