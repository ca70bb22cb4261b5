import "server-only";
import { createHash } from "node:crypto";
import { canonicalJson } from "@/engine/pattern";
import type { PlacedApplicants } from "@/engine/places";
import { sizeOf } from "./placing-question";
import type { Applicant, PlacingRows } from "./data";
import type { Considering } from "./stored-board";

/** A person who has a size and has not been invited. */
export interface Placed {
  readonly applicant: Applicant;
  readonly size: string;
}

/** Who has which size, by size in the pattern's order, in each by order of application. */
export function placedNow({ pattern, applicants }: Pick<PlacingRows, "pattern" | "applicants">): readonly Placed[] {
  return pattern.sizes.flatMap(({ id: size }) =>
    applicants
      .filter((applicant) => applicant.decision !== "no" && sizeOf(applicant, pattern) === size)
      .map((applicant) => ({ applicant, size })),
  );
}

/** Identifies a placing: who would be invited to which size. A different placing has a different name. */
export function placingName(placed: readonly Placed[]): string {
  const pairs = Object.fromEntries(placed.map(({ applicant, size }) => [applicant.applicationId, size]));
  return createHash("sha256").update(canonicalJson(pairs)).digest("hex");
}

/** The engine's answer: application -> size. */
export function answeredSizes(
  applicants: readonly Applicant[],
  { placed }: Extract<PlacedApplicants, { status: "optimal" }>,
): ReadonlyMap<string, string> {
  const sizes = new Map(placed.map(({ applicant, size }) => [applicant, size]));
  return new Map(
    applicants.flatMap(({ applicationId, code }) => {
      const size = sizes.get(code);
      return size === undefined ? [] : [[applicationId, size] as const];
    }),
  );
}

/** If someone with a maybe has a size, those with a maybe are considered until the designer chooses otherwise. */
export function usualConsidering({ applicants }: Pick<PlacingRows, "applicants">): Considering {
  const isMaybePlaced = applicants.some(
    ({ decision, size, pin }) => decision === "maybe" && size !== null && pin === null,
  );
  return isMaybePlaced ? "maybe" : "yes";
}
