import type { ApplicantsDocument } from "./applicants-document";
import { bodyIds, checkPlaces } from "./call-faults";
import type { Fault } from "./faults";
import { ownValue } from "./own-value";
import { patternFaults } from "./pattern-faults";
import { ReferenceChecker } from "./reference-checker";

/**
 * Invalid references in an applicants document.
 *
 * @param document a document that matches the schema.
 * @returns the faults, in the document's order; empty where there is none.
 */
export function applicantsFaults(document: ApplicantsDocument): Fault[] {
  const check = new ReferenceChecker();
  checkPlaces(check, document.places, document.pattern);
  const known = bodyIds(document.pattern);
  document.fitBy.forEach((id, index) => check.exists(["fitBy", index], id, known, "body measurement"));
  document.pattern.sizes.forEach(({ body }, index) => {
    for (const id of document.fitBy) {
      if (known.has(id) && ownValue(body, id) === undefined) {
        check.add(["pattern", "sizes", index, "body", id], "is missing; the fit depends on it.");
      }
    }
  });
  check.unique(["applicants"], document.applicants);
  checkApplicants(check, document);
  return [...patternFaults(document.pattern, ["pattern"]), ...check.faults];
}

function checkApplicants(check: ReferenceChecker, document: ApplicantsDocument): void {
  const sizes = new Set(document.pattern.sizes.map(({ id }) => id));
  document.applicants.forEach((applicant, index) => {
    const path = ["applicants", index];
    for (const list of ["accepts", "prefers"] as const) {
      applicant[list]?.forEach((size, index) => check.exists([...path, list, index], size, sizes, "size"));
    }
    for (const id of document.fitBy) {
      if (ownValue(applicant.body, id) === undefined)
        check.add([...path, "body", id], "is missing; the fit depends on it.");
    }
    if (applicant.locked !== undefined) check.exists([...path, "locked"], applicant.locked, sizes, "size");
    if (applicant.locked !== undefined && applicant.excluded) check.add(path, "is both locked and excluded.");
  });
}
