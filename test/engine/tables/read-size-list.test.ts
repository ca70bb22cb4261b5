import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readSizeList, sizesOfList } from "@/engine/tables";

function sizes(text: string, unit: "cm" | "in" = "cm") {
  const list = readSizeList(text, unit);
  if (!list.ok) throw new Error(list.faults.join(" "));
  return list.sizes.map(({ label, cm }) => [label, cm]);
}

function faults(text: string) {
  const list = readSizeList(text, "cm");
  return list.ok ? [] : list.faults;
}

describe("a list of sizes", () => {
  it("is one name and one body per line, with any separator", () => {
    const text = "XS 80\nS, 86,5\n Size M: 94 \n\nXL/1X\t112\n2X = 122 cm";
    expect(sizes(text)).toEqual([
      ["XS", 80],
      ["S", 86.5],
      ["Size M", 94],
      ["XL/1X", 112],
      ["2X", 122],
    ]);
  });

  it("knows sizes that are numbers, fractions and other units", () => {
    expect(sizes("38 92\n40 96,5")).toEqual([
      ["38", 92],
      ["40", 96.5],
    ]);
    // By hand: 37 1/2 in are 95.25 cm.
    expect(sizes('M 37 1/2\nL 41½\nXL 110 cm\n2X 46"', "in")).toEqual([
      ["M", 95.25],
      ["L", 41.5 * 2.54],
      ["XL", 110],
      ["2X", 46 * 2.54],
    ]);
  });

  it("uses the middle of a range, and puts the smallest first", () => {
    expect(sizes("L 98–106\nM 90-98 cm\nS\t82 - 90")).toEqual([
      ["S", 86],
      ["M", 94],
      ["L", 102],
    ]);
  });

  it("understands names above their bodies, as two rows are copied", () => {
    expect(sizes("S\tM\tL\n86\t94\t102")).toEqual([
      ["S", 86],
      ["M", 94],
      ["L", 102],
    ]);
  });

  it.each([
    ["", "Write your sizes, one a line: a name, then its body."],
    ["M", "“M” is not a name and a body. Write it like M 94."],
    ["92,5", "“92,5” is not a name and a body. Write it like M 94."],
    ["M\twide", "“M”: “wide” is not a number. Write it like 38.5, 38,5 or 12 3/8."],
    ["M 0", "“M”: “0” cannot be a body measurement."],
    ["M 90\nM 94", "“M” stands twice. Give each size a name of its own."],
    ["M 90\nL 90", "“M” and “L” are for the same body. Change one, or leave one out."],
    [
      Array.from({ length: 25 }, (_, index) => `S${index} ${80 + index}`).join("\n"),
      "These are 25 sizes. A pattern holds at most 24.",
    ],
  ])("says what is wrong: %s", (text, says) => {
    expect(faults(text)).toEqual([says]);
  });

  it("never throws, and contains what it reports", () => {
    let ran = 0;
    const part = fc.constantFrom(
      "M",
      "XL/1X",
      " ",
      "\t",
      "\n",
      ",",
      "94",
      "38,5",
      "1/2",
      "–",
      "cm",
      "½",
      "0",
      "(",
      "é",
    );
    fc.assert(
      fc.property(fc.array(part, { maxLength: 30 }), (parts) => {
        const list = readSizeList(parts.join(""), "cm");
        ran += 1;
        if (!list.ok) expect(list.faults.length).toBeGreaterThan(0);
        if (!list.ok) return;
        const bodies = list.sizes.map(({ cm }) => cm);
        expect(bodies).toEqual([...new Set(bodies)].toSorted((left, right) => left - right));
        expect(bodies.every((cm) => cm > 0 && cm <= 1_000)).toBe(true);
      }),
      { numRuns: 500 },
    );
    expect(ran).toBe(500);
  });
});

describe("sizes of a list", () => {
  const listed = [
    { label: "XL/1X", cm: 112 },
    { label: "xl 1x", cm: 120 },
  ];

  it("get unique ids, and a body known to the tables gets its id and its texts", () => {
    const made = sizesOfList(listed, "upper ARM");
    expect(made.sizeBy).toBe("upper-arm");
    expect(made.sizes.map(({ id }) => id)).toEqual(["size-xl-1x", "size-xl-1x-2"]);
    expect(made.sizes[0]?.body).toEqual({ "upper-arm": 112 });
    expect(made.bodyMeasurements[0]).toMatchObject({ label: "Upper arm", how: expect.stringMatching(/arm hanging/) });
  });

  it("may be ordered by anything", () => {
    expect(sizesOfList(listed, "Länge des Fußes").bodyMeasurements).toEqual([
      { id: "lange-des-fu-es", label: "Länge des Fußes", how: "" },
    ]);
  });
});
