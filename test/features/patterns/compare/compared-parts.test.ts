import { expect, it } from "vitest";
import { finishedChanges } from "../../../../src/features/patterns/compare/finished-changes";
import { comparedSizes, sizedChanges } from "../../../../src/features/patterns/compare/sized-changes";
import { termChanges } from "../../../../src/features/patterns/compare/term-changes";
import { patternDocument } from "../../../factories/pattern";

const before = patternDocument();

it("shows a count that was changed in one size through all sizes, and no other", () => {
  const grading = { width: { small: 98, large: 120 }, height: { small: 100, large: 110 } };
  expect(sizedChanges(before, patternDocument({ grading }), { part: "counts", unit: "cm" })).toEqual([
    {
      key: "width",
      label: "Width",
      sides: [
        { was: "98", becomes: "98" },
        { was: "118", becomes: "120" },
      ],
    },
  ]);
});

it("shows an allowance that is one number for all sizes once, its sign a word", () => {
  const after = patternDocument({ allowances: [{ id: "edging", label: "Edging", cm: -1.5 }] });
  expect(sizedChanges(before, after, { part: "allowances", unit: "cm" })).toEqual([
    { key: "edging", label: "Edging", sides: [{ was: "adds 1 cm", becomes: "takes 1.5 cm" }] },
  ]);
});

it("shows an allowance that became one by size through the sizes", () => {
  const after = patternDocument({ allowances: [{ id: "edging", label: "Edging", cm: { small: 1, large: 2 } }] });
  expect(sizedChanges(before, after, { part: "allowances", unit: "cm" })[0]?.sides).toEqual([
    { was: "adds 1 cm", becomes: "adds 1 cm" },
    { was: "adds 1 cm", becomes: "adds 2 cm" },
  ]);
});

it("shows what is new and what is gone against nothing", () => {
  const after = patternDocument({
    allowances: [],
    lengths: [{ id: "belt", label: "Belt", cm: 30.48 }],
  });
  expect(sizedChanges(before, after, { part: "allowances", unit: "in" })[0]?.sides).toEqual([
    { was: "adds 0.39 in", becomes: null },
  ]);
  // 30.48 cm are 12 in.
  expect(sizedChanges(before, after, { part: "lengths", unit: "in" })[0]?.sides).toEqual([
    { was: null, becomes: "12 in" },
  ]);
});

it("sets sizes that are gone behind those that are there, and marks them", () => {
  const [, large] = before.sizes;
  const after = patternDocument({
    sizes: [...(large ? [large] : []), { id: "huge", label: "XXL", body: { bust: 130 } }],
    grading: { width: { large: 118, huge: 138 }, height: { large: 110, huge: 112 } },
  });
  expect(comparedSizes(before, after)).toEqual([
    { key: "large", label: "L" },
    { key: "huge", label: "XXL" },
    { key: "small", label: "S (removed)" },
  ]);
  const [width] = sizedChanges(before, after, { part: "counts", unit: "cm" });
  expect(width?.sides).toEqual([
    { was: "118", becomes: "118" },
    { was: null, becomes: "138" },
    { was: "98", becomes: null },
  ]);
  // The edging is one number for whatever sizes there are.
  expect(sizedChanges(before, after, { part: "allowances", unit: "cm" })).toEqual([]);
});

it("shows eases, targets and bodies", () => {
  const [bust, length] = before.measurements;
  const after = patternDocument({
    measurements: [
      ...(bust ? [{ ...bust, target: { body: "bust", easeCm: 8 } }] : []),
      ...(length ? [{ ...length, target: { cm: { small: 40, large: 44 } } }] : []),
    ],
    sizes: before.sizes.map((size) => ({ ...size, body: { bust: 91 } })),
  });
  expect(sizedChanges(before, after, { part: "targets", unit: "cm" })).toEqual([
    { key: "bust.ease", label: "Ease of Bust", sides: [{ was: "adds 10 cm", becomes: "adds 8 cm" }] },
    {
      key: "length.cm",
      label: "Target of Length",
      sides: [
        { was: null, becomes: "40 cm" },
        { was: null, becomes: "44 cm" },
      ],
    },
  ]);
  expect(sizedChanges(before, after, { part: "bodies", unit: "cm" })[0]?.sides).toEqual([
    { was: "90 cm", becomes: "91 cm" },
    { was: "110 cm", becomes: "91 cm" },
  ]);
});

it("tells finished measurements that come out otherwise, as far as they are shown", () => {
  // By hand: 98 stitches at 20 to 10 cm are 49 cm, twice 98 and twice the edging 2: 100; with 100 stitches 102.
  const grading = { width: { small: 100, large: 118 }, height: { small: 100, large: 110 } };
  expect(finishedChanges(before, patternDocument({ grading }), "cm")).toEqual([
    {
      key: "bust",
      label: "A Bust",
      sides: [
        { was: "100.0", becomes: "102.0" },
        { was: "120.0", becomes: "120.0" },
      ],
    },
  ]);
  const hardly = patternDocument({ allowances: [{ id: "edging", label: "Edging", cm: 1.01 }] });
  expect(finishedChanges(before, hardly, "cm")).toEqual([]);
  // A measurement without its counts has no length; one that needs others only keeps it.
  const without = patternDocument({ grading: { width: { small: 98, large: 118 } } });
  expect(finishedChanges(before, without, "cm")).toEqual([
    {
      key: "length",
      label: "B Length",
      sides: [
        { was: "40.0", becomes: null },
        { was: "44.0", becomes: null },
      ],
    },
  ]);
});

it("words how a measurement was worked out and is now, a line a term", () => {
  const [bust] = before.measurements;
  const after = patternDocument({
    measurements: bust
      ? [
          {
            ...bust,
            terms: [
              { times: 4, count: "width", stretched: true },
              { times: -1, allowance: "edging" },
              {
                times: 1,
                diagonal: { across: [{ times: 1, count: "width" }], along: [{ times: 0.5, count: "height" }] },
              },
            ],
          },
        ]
      : [],
  });
  expect(termChanges(before, after)).toEqual([
    {
      key: "bust",
      label: "A Bust",
      was: "2 × Width in Main\n2 × Edging, what it adds or takes",
      becomes: [
        "4 × Width in Main, as stretched when worn",
        "less Edging, what it adds or takes",
        "the diagonal of (Width in Main) across and (0.5 × Height in Main) along",
      ].join("\n"),
    },
    { key: "length", label: "B Length", was: "Height in Main", becomes: "" },
  ]);
});
