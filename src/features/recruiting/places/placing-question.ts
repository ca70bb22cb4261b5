import {
  APPLICANTS_FORMAT,
  ownValue,
  type ApplicantsDocument,
  type PatternDocument,
  type Places,
} from "@/engine/pattern";
import { mostTesters } from "@/engine/places";
import type { Applicant, PlacingRows } from "./data";
import type { Considering } from "./stored-board";
import { takesPlaceNow } from "./tester-state";

export interface PlacingQuestion {
  /** The engine's input; the spots of those who are invited are already subtracted. */
  readonly document: ApplicantsDocument;
  /** Applicants who cannot be placed because a measurement that decides the fit is unknown, with what is missing. */
  readonly withoutBody: readonly { readonly applicant: Applicant; readonly missing: readonly string[] }[];
}

/**
 * The applicants as a document, in the order of their applications: those who are considered, and as excluded those who were rejected or left waiting.
 *
 * @param now the moment at which an unanswered invitation may have ended.
 */
export function placingQuestion(
  rows: PlacingRows,
  { considering, now }: { readonly considering: Considering; readonly now: Date },
): PlacingQuestion {
  const { pattern, applicants } = rows;
  const fitBy = fitMeasurements(rows);
  const asked = applicants
    .filter((applicant) => applicant.decision === "no" || isConsidered(applicant, considering))
    .map((applicant) => ({
      applicant,
      missing: fitBy.filter((id) => ownValue(applicant.body ?? {}, id) === undefined),
    }));
  return {
    document: {
      format: APPLICANTS_FORMAT,
      pattern,
      places: placesLeft(rows, now),
      fitBy,
      applicants: asked
        .filter(({ missing }) => missing.length === 0)
        .map(({ applicant }) => documentApplicant(applicant, pattern)),
    },
    withoutBody: asked.filter(({ applicant, missing }) => missing.length > 0 && applicant.decision !== "no"),
  };
}

/** A size that the designer locked stays, whatever they decided later, except for a no. */
function isConsidered({ decision, pin }: Applicant, considering: Considering): boolean {
  if (decision === "no") return false;
  return decision === "yes" || pin === "size" || (decision === "maybe" && considering === "maybe");
}

/** How many applicants are considered. */
export function countConsidered({ applicants }: PlacingRows, considering: Considering): number {
  return applicants.filter((applicant) => isConsidered(applicant, considering)).length;
}

/** Body measurements that decide the fit, as far as every size of the pattern still has them. */
export function fitMeasurements({ pattern, listing }: Pick<PlacingRows, "pattern" | "listing">): readonly string[] {
  return (listing?.fitBy ?? []).filter((id) => pattern.sizes.every(({ body }) => ownValue(body, id) !== undefined));
}

/** Spots without an invited tester, by size of the pattern. */
export function placesLeft({ pattern, places, testers }: PlacingRows, now: Date): Places {
  const standing = testers.filter((tester) => takesPlaceNow(tester, now));
  return Object.fromEntries(
    pattern.sizes.map(({ id }) => {
      const place = ownValue(places, id) ?? { least: 0, wanted: 0 };
      const taken = standing.filter(({ size }) => size === id).length;
      const left = (testers: number) => Math.max(0, testers - taken);
      return [id, { least: left(place.least), wanted: left(place.wanted), most: left(mostTesters(place)) }];
    }),
  );
}

/** The applicant's current size, if the pattern still has it. */
export function sizeOf({ size }: Applicant, { sizes }: PatternDocument): string | null {
  return sizes.some(({ id }) => id === size) ? size : null;
}

function documentApplicant(applicant: Applicant, pattern: PatternDocument): ApplicantsDocument["applicants"][number] {
  const { code, body, said, record, decision, pin } = applicant;
  const existing = (sizes: readonly string[]) => sizes.filter((size) => pattern.sizes.some(({ id }) => id === size));
  const isExcluded = decision === "no" || pin === "waiting";
  const locked = pin === "size" && !isExcluded ? sizeOf(applicant, pattern) : null;
  return {
    id: code,
    body: body ?? {},
    ...(said.accepts === null ? {} : { accepts: existing(said.accepts) }),
    ...(said.prefers.length === 0 ? {} : { prefers: existing(said.prefers) }),
    ...(record === null ? {} : { record }),
    ...(locked === null ? {} : { locked }),
    ...(isExcluded ? { excluded: true } : {}),
  };
}
