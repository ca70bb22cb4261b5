import type { Garment, GarmentStep, Tie } from "@/engine/pattern";

const tee = { fabric: "stocking", yarn: "main" } as const;
const body = { in: { part: "body" } };
const sleeve = { in: { part: "sleeve" } };

/** One side of the front neck, whose edge toward the neck is decreased. */
function side(name: "left" | "right", neckEdge: "left" | "right"): GarmentStep[] {
  const here = { in: { part: `front-${name}` } };
  return [
    {
      ...{ ...here, id: `front-${name}-neck`, do: "work", rows: { count: "neck-rows" } },
      shape: [{ at: neckEdge, stitches: 1, times: { count: "neck-steps" }, as: "decrease", every: 2 }],
    },
    { ...here, id: `front-${name}-end`, do: "end", how: "bind-off", edge: `front-${name}-shoulder` },
  ];
}

/**
 * How the invented tee is made: in the round to the underarms, then the front goes on above the body, and the back is a piece of
 * its own; sleeves are picked up at the armholes.
 */
export const saltmarshGarment: Garment = {
  pieces: [
    {
      ...{ ...tee, id: "body", label: "Body", made: 1, start: "hem" },
      parts: ["body", "front", "front-right", "front-neck", "front-left"],
      edges: [
        { id: "front-right-armhole", part: "front", side: "right" },
        { id: "front-left-armhole", part: "front", side: "left" },
      ],
    },
    {
      ...{ ...tee, id: "back", label: "Back", made: 1, start: "hem" },
      parts: ["back", "back-right", "back-neck", "back-left"],
      edges: [
        { id: "back-right-armhole", part: "back", side: "right" },
        { id: "back-left-armhole", part: "back", side: "left" },
      ],
    },
    { ...{ ...tee, id: "sleeve", label: "Sleeve", made: 2, start: "neck" }, parts: ["sleeve"], edges: [] },
  ],
  steps: [
    { ...body, id: "cast-on", do: "start", how: "cast-on", stitches: { count: "body" }, worked: "round" },
    { ...body, id: "hem-rib", label: "Hem rib", do: "work", rows: { length: "hem-rib" } },
    { ...body, id: "body-rounds", do: "work", rows: { count: "body-rows" } },
    {
      ...{ ...body, id: "underarms", do: "divide" },
      into: [
        { part: "back", stitches: { count: "yoke" } },
        { part: "front", stitches: { count: "yoke" } },
      ],
    },
    { id: "front-rows", in: { part: "front" }, do: "work", rows: { count: "front-rows" } },
    {
      ...{ id: "front-neck", in: { part: "front" }, do: "divide" },
      into: [
        { part: "front-right", stitches: { count: "front-side" } },
        { part: "front-neck", stitches: { count: "neck-centre" } },
        { part: "front-left", stitches: { count: "front-side" } },
      ],
    },
    { id: "front-neck-hold", in: { part: "front-neck" }, do: "end", how: "hold", edge: "front-neck-edge" },
    ...side("right", "left"),
    ...side("left", "right"),
    { id: "back-rows", in: { part: "back" }, do: "work", rows: { count: "yoke-rows" } },
    {
      ...{ id: "back-shoulders", in: { part: "back" }, do: "divide" },
      into: [
        { part: "back-right", stitches: { count: "shoulder" } },
        { part: "back-neck", stitches: { count: "neck" } },
        { part: "back-left", stitches: { count: "shoulder" } },
      ],
    },
    { id: "back-right-end", in: { part: "back-right" }, do: "end", how: "bind-off", edge: "back-right-shoulder" },
    { id: "back-neck-hold", in: { part: "back-neck" }, do: "end", how: "hold", edge: "back-neck-edge" },
    { id: "back-left-end", in: { part: "back-left" }, do: "end", how: "bind-off", edge: "back-left-shoulder" },
    {
      ...{ ...sleeve, id: "pick-up", do: "start", how: "pick-up", stitches: { count: "sleeve-top" }, worked: "flat" },
      along: [{ edge: "front-right-armhole" }, { edge: "back-left-armhole" }],
    },
    {
      ...{ ...sleeve, id: "sleeve-rows", do: "work", rows: { count: "sleeve-rows" } },
      shape: [{ at: "both", stitches: 1, times: { count: "sleeve-steps" }, as: "decrease", everyOther: true }],
    },
    { ...sleeve, id: "cuff-rib", label: "Cuff rib", do: "work", rows: { length: "cuff-rib" } },
    { ...sleeve, id: "sleeve-end", do: "end", how: "bind-off", edge: "cuff" },
  ],
  seams: [
    { a: { edge: "front-right-shoulder" }, b: { edge: "back-left-shoulder" } },
    { a: { edge: "front-left-shoulder" }, b: { edge: "back-right-shoulder" } },
  ],
};

/** What must add up where it is divided, and over its decreases. */
export const saltmarshTies: readonly Tie[] = [
  { count: "body", equals: [{ times: 2, count: "yoke" }] },
  {
    count: "yoke",
    equals: [
      { times: 2, count: "shoulder" },
      { times: 1, count: "neck" },
    ],
  },
  {
    count: "yoke",
    equals: [
      { times: 2, count: "front-side" },
      { times: 1, count: "neck-centre" },
    ],
  },
  {
    count: "front-side",
    equals: [
      { times: 1, count: "shoulder" },
      { times: 1, count: "neck-steps" },
    ],
  },
  {
    count: "yoke-rows",
    equals: [
      { times: 1, count: "front-rows" },
      { times: 1, count: "neck-rows" },
    ],
  },
  {
    count: "sleeve-top",
    equals: [
      { times: 1, count: "sleeve-cuff" },
      { times: 2, count: "sleeve-steps" },
    ],
  },
];
