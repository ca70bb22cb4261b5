import { z } from "zod";
import { callPageHref } from "@/features/calls/call-pages";
import { pageNumberSchema } from "@/ui/page-number";

/** The query of the page; unknown values are ignored. */
export const questionsQuerySchema = z.object({
  /** The page of places with questions, and of places with trouble spots. */
  questions: pageNumberSchema,
  troubles: pageNumberSchema,
  /** The key of a single place, and the page of its notes. */
  at: z.string().max(100).optional().catch(undefined),
  page: pageNumberSchema,
});

export type QuestionsQuery = z.infer<typeof questionsQuerySchema>;

/** The address of a call's questions for a query. */
export function questionsHref(callId: string, query: Partial<QuestionsQuery>): string {
  const parameters = new URLSearchParams();
  for (const [name, value] of Object.entries(query))
    if (value !== undefined && value !== 1) parameters.set(name, String(value));
  return parameters.size === 0 ? callPageHref(callId, "questions") : `/calls/${callId}/questions?${parameters}`;
}
