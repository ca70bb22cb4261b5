import { z } from "zod";
import { parseApplicants, parseWith, type ApplicantsDocument, type Parsed } from "../pattern";
import type { AssigningOptions } from "./assign-applicants";

/** The input of the verb `places`: applicants, and how they are assigned. */
export interface PlacesRequest extends AssigningOptions {
  readonly applicants: ApplicantsDocument;
}

const requestSchema = z.strictObject({ applicants: z.looseObject({}), endsFirst: z.boolean().optional() });

/** Reads the input of `places`: applicants, or applicants with options. @param value parsed JSON of any shape. */
export function parsePlacesRequest(value: unknown): Parsed<PlacesRequest> {
  if (!isRequest(value)) {
    const parsed = parseApplicants(value);
    return parsed.ok ? { ok: true, document: { applicants: parsed.document } } : parsed;
  }
  const request = parseWith(requestSchema, value, () => []);
  if (!request.ok) return request;
  const { applicants, endsFirst } = request.document;
  const parsed = parseApplicants(applicants);
  if (!parsed.ok)
    return {
      ok: false,
      faults: parsed.faults.map(({ path, says }) => ({
        path: path === "$" ? "applicants" : `applicants.${path}`,
        says,
      })),
    };
  return { ok: true, document: { applicants: parsed.document, endsFirst } };
}

/** A document of applicants lists them; a request has such a document under the same name. */
function isRequest(value: unknown): boolean {
  return typeof value === "object" && value !== null && "applicants" in value && !Array.isArray(value.applicants);
}
