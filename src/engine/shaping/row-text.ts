import type { Fabric } from "../pattern";

/** The noun for a row of a fabric. */
export type RowNoun = "row" | "round";

/** A fabric that is worked in rounds, turned or not, has rounds; any other has rows. */
export function rowNoun({ worked }: Pick<Fabric, "worked">): RowNoun {
  return worked === "round" || worked === "turned rounds" ? "round" : "row";
}

/** The same of many. */
export function rowsNoun(fabric: Pick<Fabric, "worked">): `${RowNoun}s` {
  return `${rowNoun(fabric)}s`;
}

/** `1 row`, `3 rounds`. */
export function withNoun(number: number, noun: "stitch" | RowNoun): string {
  if (number === 1) return `1 ${noun}`;
  return `${number} ${noun === "stitch" ? "stitches" : `${noun}s`}`;
}

/** `1st`, `2nd`, `11th`, `103rd`. */
export function ordinal(number: number): string {
  const isTeen = Math.floor(number / 10) % 10 === 1;
  const ending = isTeen ? undefined : ["th", "st", "nd", "rd"][number % 10];
  return `${number}${ending ?? "th"}`;
}

/** `once`, `twice`, `3 times`. */
export function timesText(times: number): string {
  if (times === 1) return "once";
  return times === 2 ? "twice" : `${times} times`;
}
