import type { DraftPattern } from "@/engine/editing";
import { uniqueSlug } from "@/engine/tables";
import { namesOf, type DraftNumber, type DraftPiece, type NewStep } from "./draft-garment";

/** What can be done next, in the trade's words, with the steps that it adds. */
export interface NextStep {
  readonly label: string;
  readonly steps: readonly NewStep[];
}

const OPEN: DraftNumber = { count: "" };

interface Next {
  readonly pattern: DraftPattern;
  readonly piece: DraftPiece;
  /** The part that is worked on; undefined where nothing is on the needle. */
  readonly part: string | undefined;
}

/** What can be done next in a piece. */
export function nextSteps(given: Next): NextStep[] {
  const { part } = given;
  return part === undefined
    ? waysToStart(given)
    : [...waysToWork(part), ...waysToDivide(given.pattern, part), ...waysToEnd(given, part)];
}

/** Ways to begin a piece, or another part of it. */
function waysToStart({ pattern: { craft, fabrics, garment }, piece }: Next): NextStep[] {
  const begun = new Set(garment.steps.map((step) => step.in.part));
  const own = piece.parts.find((part) => !begun.has(part)) ?? uniqueSlug(piece.label || piece.id, namesOf(garment));
  const worked = fabrics.find(({ id }) => id === piece.fabric)?.worked ?? "flat";
  const start = { in: { part: own }, do: "start", stitches: OPEN, worked } as const;
  const pickUp: NextStep = {
    label: "Pick up along an edge",
    steps: [{ ...start, how: "pick-up", along: [{ edge: "" }], rate: [3, 4] }],
  };
  if (craft === "crochet")
    return [
      { label: "Chain", steps: [{ ...start, how: "chain" }] },
      { label: "Foundation stitches", steps: [{ ...start, how: "foundation" }] },
      pickUp,
    ];
  return [
    { label: "Cast on", steps: [{ ...start, how: "cast-on" }] },
    { label: "Cast on provisionally", steps: [{ ...start, how: "provisional" }] },
    pickUp,
  ];
}

function waysToWork(part: string): NextStep[] {
  const here = { in: { part } };
  return [
    { label: "Work even", steps: [{ ...here, do: "work", rows: OPEN }] },
    {
      label: "Work and shape",
      steps: [
        {
          ...here,
          ...{ do: "work", rows: OPEN },
          shape: [{ at: "both", stitches: 1, times: OPEN, as: "decrease", every: 2 }],
        },
      ],
    },
    { label: "Bind off at an edge", steps: [{ ...here, do: "bind-off", at: "both", each: OPEN }] },
    { label: "Cast on at an edge", steps: [{ ...here, do: "add", at: "both", each: OPEN }] },
    { label: "Short rows", steps: [{ ...here, do: "short-rows", at: "left", each: OPEN, turns: OPEN }] },
    { label: "Place a marker", steps: [{ ...here, do: "mark", marker: "marker", at: OPEN }] },
  ];
}

function waysToDivide({ garment }: DraftPattern, part: string): NextStep[] {
  const here = { in: { part } };
  const taken = namesOf(garment);
  const [right, centre, left] = ["right", "centre", "left"].map((side) => uniqueSlug(`${part} ${side}`, taken));
  const into = (parts: readonly (string | undefined)[]) =>
    parts.map((each) => ({ part: each ?? part, stitches: OPEN }));
  const edge = uniqueSlug(`${part} neck`, taken);
  return [
    { label: "Divide", steps: [{ ...here, do: "divide", into: into([right, left]) }] },
    {
      label: "Hold the centre, work each side apart",
      steps: [
        { ...here, do: "divide", into: into([right, centre, left]) },
        { in: { part: centre ?? part }, do: "end", how: "hold", edge },
      ],
    },
  ];
}

function waysToEnd({ pattern: { craft, garment }, piece }: Next, part: string): NextStep[] {
  const taken = namesOf(garment);
  const edge = uniqueSlug(`${part} end`, taken);
  const here = { in: { part }, do: "end", edge } as const;
  const joined: NextStep = {
    label: "Join with other stitches",
    steps: [
      {
        ...{ in: { part }, do: "join", parts: [{ part }, { part: "" }] },
        ...{ as: uniqueSlug(`${piece.label || piece.id} joined`, taken), worked: "flat" },
      },
    ],
  };
  if (craft === "crochet") return [joined, { label: "Fasten off", steps: [{ ...here, how: "fasten-off" }] }];
  return [
    joined,
    { label: "Put on hold", steps: [{ ...here, how: "hold" }] },
    { label: "Bind off", steps: [{ ...here, how: "bind-off" }] },
  ];
}
