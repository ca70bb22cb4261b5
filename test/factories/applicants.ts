import { APPLICANTS_FORMAT, type ApplicantsDocument } from "@/engine/pattern";
import type { Applicant } from "@/engine/places";
import { patternDocument } from "./pattern";

/** S, M and L by bust, 90, 98 and 108 cm: half distances 4 and 5, so that reach is 8 or 10 cm. */
export function applicantsDocument(change: Partial<ApplicantsDocument> = {}): ApplicantsDocument {
  return {
    format: APPLICANTS_FORMAT,
    pattern: patternDocument({
      bodyMeasurements: [{ id: "bust", label: "Bust", how: "Around the fullest part." }],
      sizes: [
        { id: "small", label: "S", body: { bust: 90 } },
        { id: "medium", label: "M", body: { bust: 98 } },
        { id: "large", label: "L", body: { bust: 108 } },
      ],
      grading: undefined,
      counts: [],
      measurements: [],
    }),
    places: {
      small: { least: 0, wanted: 1 },
      medium: { least: 0, wanted: 1 },
      large: { least: 0, wanted: 1 },
    },
    fitBy: ["bust"],
    applicants: [],
    ...change,
  };
}

/** An applicant with this bust, who accepts any size within reach. */
export function applicant(id: string, bust: number, change: Partial<Applicant> = {}): Applicant {
  return { id, body: { bust }, ...change };
}
