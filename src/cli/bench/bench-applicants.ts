import { APPLICANTS_FORMAT, type ApplicantsDocument, type PatternDocument } from "@/engine/pattern";
import { seededRandom } from "@/engine/seeded-random";
import { benchGarment } from "./bench-garment";

const FIT_BY = ["bust", "hip", "arm"];

/**
 * Invented applicants for a garment: bodies gathered about the middle sizes, some with wishes or a record, twice as many
 * as there are places.
 *
 * @param sizes at most 24.
 */
export function benchApplicants(given: {
  readonly applicants: number;
  readonly sizes: number;
  readonly seed: number;
}): ApplicantsDocument {
  const pattern = fittedPattern(given.sizes);
  const { uniform, normal, below } = seededRandom(given.seed);
  const middle = (given.sizes - 1) / 2;
  const wanted = Math.ceil(given.applicants / given.sizes / 2);
  const sizeIds = pattern.sizes.map(({ id }) => id);
  return {
    format: APPLICANTS_FORMAT,
    pattern,
    places: Object.fromEntries(sizeIds.map((id) => [id, { least: Math.ceil(wanted / 2), wanted }])),
    fitBy: FIT_BY,
    applicants: Array.from({ length: given.applicants }, (_, index) => {
      const place = middle + (given.sizes / 4) * normal();
      const body = bodyAt(place);
      const near = Math.min(given.sizes - 1, Math.max(0, Math.round(place)));
      const kind = uniform();
      return {
        id: `applicant-${index}`,
        body: {
          bust: roundedCm(body.bust + normal()),
          hip: roundedCm(body.hip + 2 * normal()),
          arm: roundedCm(body.arm + 0.6 * normal()),
        },
        ...(kind < 0.2 ? { prefers: sizeIds.slice(near, near + 1 + below(2)) } : {}),
        ...(kind > 0.9 ? { accepts: sizeIds.slice(Math.max(0, near - 1), near + 1) } : {}),
        ...(kind > 0.5 && kind < 0.7 ? { record: { finished: below(5), dropped: below(3) } } : {}),
      };
    }),
  };
}

function fittedPattern(sizes: number): PatternDocument {
  const garment = benchGarment({ sizes, groups: 1 });
  return {
    ...garment,
    sizes: garment.sizes.map((size, index) => ({ ...size, body: bodyAt(index) })),
    bodyMeasurements: FIT_BY.map((id) => ({ id, label: id, how: "Around." })),
  };
}

function bodyAt(place: number): { readonly bust: number; readonly hip: number; readonly arm: number } {
  return {
    bust: Math.max(50, 76 + 5 * place),
    hip: Math.max(55, 84 + 4.8 * place),
    arm: Math.max(15, 25 + 1.7 * place),
  };
}

/** People measure to half a centimetre. */
function roundedCm(cm: number): number {
  return Math.round(2 * cm) / 2;
}
