import { z } from "zod";
import { pageNumberSchema } from "@/ui/page-number";

/** What of the page is asked for; what is no such thing is passed over. */
export const saidQuerySchema = z.object({
  /** The page of places that were asked about, and of places where something went wrong. */
  questions: pageNumberSchema,
  troubles: pageNumberSchema,
  /** The key of a place that is read alone, and the page of what is said of it. */
  at: z.string().max(100).optional().catch(undefined),
  page: pageNumberSchema,
});

export type SaidQuery = z.infer<typeof saidQuerySchema>;

/** The page of a call's questions where something else is asked for. */
export function saidHref(callId: string, query: Partial<SaidQuery>): string {
  const parameters = new URLSearchParams();
  for (const [name, value] of Object.entries(query))
    if (value !== undefined && value !== 1) parameters.set(name, String(value));
  return parameters.size === 0 ? `/calls/${callId}/questions` : `/calls/${callId}/questions?${parameters}`;
}
