import { z } from "zod";
import { pageNumberSchema } from "@/ui/page-number";

const first = z.preprocess((value: unknown) => (Array.isArray(value) ? value[0] : value), z.string().optional());

/** The query of the list of applications; unknown values are ignored. */
export const listQuerySchema = z.object({
  decision: first.pipe(z.enum(["all", "undecided", "yes", "maybe", "no", "withdrawn"])).catch("all"),
  size: first.catch(undefined),
  page: pageNumberSchema,
});

export type ListQuery = z.infer<typeof listQuerySchema>;

/** The address of the list, or of one application in it, for a query. */
export function listAddress(callId: string, { decision, size, page }: ListQuery, applicationId?: string): string {
  const asked = new URLSearchParams();
  if (decision !== "all") asked.set("decision", decision);
  if (size !== undefined) asked.set("size", size);
  if (page > 1 && applicationId === undefined) asked.set("page", String(page));
  const text = asked.toString();
  const one = applicationId === undefined ? "" : `/${applicationId}`;
  return `/calls/${callId}/applications${one}${text === "" ? "" : `?${text}`}`;
}
