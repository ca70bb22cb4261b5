import type { PlacedNumber, TypedStep } from "../pattern";
import type { RowNoun } from "../shaping";

type Typed<Do extends TypedStep["do"]> = Extract<TypedStep, { readonly do: Do }>;
type EdgeStep = Typed<"add" | "bind-off" | "hold" | "leave">;
type TypedShape = NonNullable<Typed<"work">["shape"]>[number];

/** How numbers are told: by name, in one size or in all of them. */
export interface StepNames {
  readonly number: (number: PlacedNumber["number"]) => string;
  /** `to “Armhole”`, for a length by id. */
  readonly length: (id: string) => string;
  readonly noun: RowNoun;
}

/** What a step does, as a pattern says it: `Bind off 6 stitches at the start of the next 2 rows`. */
export function stepText(step: TypedStep, names: StepNames): string {
  switch (step.do) {
    case "start":
      return startText(step, names);
    case "work":
      return workText(step, names);
    case "section":
      return `From ${names.number(step.from)} to ${stitches(step.to, names)} over ${counted(step.rows, names)}`;
    case "add":
    case "bind-off":
    case "hold":
    case "leave":
      return edgeText(step, names);
    case "short-rows":
      return `Work ${names.number(step.turns)} short-row turns, each with ${stitches(step.each, names)} more left ${placeText(step.at)}`;
    case "mark":
      return step.at === "start-of-round"
        ? `Place marker “${step.marker}” at the start of the round`
        : `Place marker “${step.marker}” after ${stitches(step.at, names)}`;
    case "unmark":
      return `Remove marker “${step.marker}”`;
    case "divide":
      return `Divide: ${step.into.map(({ part, stitches }) => `${names.number(stitches)} for “${part}”`).join(", ")}`;
    case "join":
      return joinText(step, names);
    case "end":
      return `${END_TEXTS[step.how]}${step.with === undefined ? "" : ` “${step.with.part}”`}`;
  }
}

const END_TEXTS: Readonly<Record<Typed<"end">["how"], string>> = {
  "bind-off": "Bind off all stitches",
  hold: "Put all stitches on hold",
  graft: "Graft to",
  "three-needle": "Bind off together with",
  "fasten-off": "Fasten off",
};

function startText({ how, stitches: number, worked, along = [] }: Typed<"start">, names: StepNames): string {
  const many = stitches(number, names);
  const begun = {
    "cast-on": `Cast on ${many}`,
    provisional: `Cast on ${many} provisionally`,
    chain: `Chain ${names.number(number)}`,
    foundation: `Work ${names.number(number)} foundation stitches`,
    "pick-up": `Pick up ${many}${along.length === 0 ? "" : ` along ${along.map(({ edge }) => `“${edge}”`).join(", ")}`}`,
  }[how];
  return `${begun}${WORKED_TEXTS[worked]}`;
}

const WORKED_TEXTS: Readonly<Record<Typed<"start">["worked"], string>> = {
  flat: "",
  round: " and join in the round",
  "turned rounds": " and join for turned rounds",
  spiral: " and work in a spiral",
};

function workText({ rows, shape = [] }: Typed<"work">, names: StepNames): string {
  const far = typeof rows === "object" && "length" in rows ? names.length(rows.length) : counted(rows, names);
  if (shape.length === 0) return `Work ${far} even`;
  return [`Work ${far}`, ...shape.map((each) => shapeText(each, names))].join("; ");
}

const SHAPE_VERBS: Readonly<Record<TypedShape["as"], string>> = {
  increase: "increase",
  decrease: "decrease",
  "bind-off": "bind off",
  add: "cast on",
};

function shapeText(
  { as, at, stitches: number, times, every, everyOther, start }: TypedShape,
  names: StepNames,
): string {
  const { noun } = names;
  const where = at === "both" ? "at each end" : placeText(at);
  const often =
    every === undefined
      ? `spread evenly over ${everyOther ? `every other ${noun}` : `the ${noun}s`}`
      : everyText(every, names);
  const first = start === undefined ? "" : `, first in ${noun} ${names.number(start)}`;
  return `${SHAPE_VERBS[as]} ${stitches(number, names)} ${where}, ${often}, ${timesText(times, names)}${first}`;
}

function everyText(every: PlacedNumber["number"], { number, noun }: StepNames): string {
  const text = number(every);
  if (text === "1") return `every ${noun}`;
  return text === "2" ? `every other ${noun}` : `every ${text} ${noun}s`;
}

function timesText(times: PlacedNumber["number"], { number }: StepNames): string {
  const text = number(times);
  if (text === "1") return "once";
  return text === "2" ? "twice" : `${text} times`;
}

const EDGE_VERBS: Readonly<Record<EdgeStep["do"], string>> = {
  add: "Cast on",
  "bind-off": "Bind off",
  hold: "Put on hold",
  leave: "Leave unworked",
};

function edgeText({ do: what, at, each, times = 1 }: EdgeStep, names: StepNames): string {
  const many = `${EDGE_VERBS[what]} ${stitches(each, names)}`;
  const end = what === "leave" ? "end" : "start";
  const once = names.number(times) === "1";
  if (at === "both")
    return once
      ? `${many} at the ${end} of the next 2 ${names.noun}s`
      : `${many} at the ${end} of the next 2 ${names.noun}s, ${timesText(times, names)}`;
  return `${many} ${placeText(at)}${once ? "" : `, ${timesText(times, names)}`}`;
}

function joinText({ parts, between = [], worked }: Typed<"join">, names: StepNames): string {
  const added = between.length === 0 ? "" : `, with ${between.map(names.number).join(" and ")} new stitches between`;
  return `Join ${parts.map(({ part }) => `“${part}”`).join(", ")}${worked === "flat" ? "" : " in the round"}${added}`;
}

function placeText(at: TypedShape["at"]): string {
  if (typeof at === "object") return `at marker “${at.marker}”`;
  switch (at) {
    case "left":
      return "at the left edge";
    case "right":
      return "at the right edge";
    case "both":
      return "at both edges";
    case "centre":
      return "at the centre";
    case "even":
      return "evenly spread";
  }
}

function stitches(number: PlacedNumber["number"], names: StepNames): string {
  const text = names.number(number);
  return `${text} ${text === "1" ? "stitch" : "stitches"}`;
}

function counted(rows: PlacedNumber["number"], { number, noun }: StepNames): string {
  const text = number(rows);
  return `${text} ${text === "1" ? noun : `${noun}s`}`;
}
