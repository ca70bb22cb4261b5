import type { PathPart } from "./faults";
import type { TypedStep } from "./garment-document";
import type { Count } from "./pattern-document";

/** A number of a step, where it stands, and what it counts where it counts one thing only. */
export interface PlacedNumber {
  readonly path: readonly PathPart[];
  readonly number: Extract<TypedStep, { readonly do: "start" }>["stitches"];
  readonly direction?: Count["direction"];
}

/** Numbers of a step that may be counts; lengths are not among them. @param path of the step. */
export function numbersOfStep(step: TypedStep, path: readonly PathPart[]): PlacedNumber[] {
  const placed = (
    key: string,
    number: PlacedNumber["number"] | undefined,
    direction?: Count["direction"],
  ): PlacedNumber[] =>
    number === undefined ? [] : [{ path: [...path, key], number, ...(direction ? { direction } : {}) }];
  switch (step.do) {
    case "start":
      return placed("stitches", step.stitches, "stitches");
    case "work":
      return [
        ...(typeof step.rows === "object" && "length" in step.rows ? [] : placed("rows", step.rows, "rows")),
        ...(step.shape ?? []).flatMap(({ stitches, times, every, start }, index) =>
          Object.entries({ stitches, times, every, start }).flatMap(([key, number]) =>
            number === undefined ? [] : [{ path: [...path, "shape", index, key], number }],
          ),
        ),
      ];
    case "section":
      return [
        ...placed("from", step.from, "stitches"),
        ...placed("to", step.to, "stitches"),
        ...placed("rows", step.rows, "rows"),
      ];
    case "add":
    case "bind-off":
    case "hold":
    case "leave":
      return [...placed("each", step.each, "stitches"), ...placed("times", step.times)];
    case "short-rows":
      return [...placed("each", step.each, "stitches"), ...placed("turns", step.turns)];
    case "mark":
      return step.at === "start-of-round" ? [] : placed("at", step.at, "stitches");
    case "divide":
      return step.into.map(({ stitches }, index) => ({
        ...{ path: [...path, "into", index, "stitches"], number: stitches, direction: "stitches" },
      }));
    case "join":
      return (step.between ?? []).map((number, index) => ({
        ...{ path: [...path, "between", index], number, direction: "stitches" },
      }));
    case "unmark":
    case "end":
      return [];
  }
}

/** Ids of the counts that a step is worked from. */
export function countsOfStep(step: TypedStep): string[] {
  return numbersOfStep(step, []).flatMap(({ number }) => (typeof number === "object" ? [number.count] : []));
}

/** Ids of the lengths that a step is worked to. */
export function lengthsOfStep(step: TypedStep): string[] {
  return step.do === "work" && typeof step.rows === "object" && "length" in step.rows ? [step.rows.length] : [];
}
