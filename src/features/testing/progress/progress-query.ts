import { z } from "zod";
import { callPageHref } from "@/features/calls/call-pages";
import { pageNumberSchema } from "@/ui/page-number";

/** What may need the designer's attention, the most urgent first. */
export const NEEDS = [
  "stuck",
  "stopped",
  "freed",
  "late",
  "lapsed",
  "declined",
  "off gauge",
  "answer",
  "silent",
  "behind",
] as const;

export type Need = (typeof NEEDS)[number];

/** The query of the list of testers; unknown values are ignored. */
export const progressQuerySchema = z.object({
  size: z.string().optional().catch(undefined),
  /** "any": whatever it is. */
  needs: z
    .enum([...NEEDS, "any"])
    .optional()
    .catch(undefined),
  page: pageNumberSchema,
});

export type ProgressQuery = z.infer<typeof progressQuerySchema>;

/** The address of the list for a query. */
export function progressHref(callId: string, query: Partial<ProgressQuery>): string {
  const asked = searchOf(query);
  return asked.size === 0 ? callPageHref(callId, "progress") : `/calls/${callId}/progress?${asked}`;
}

/** The page of a message to testers who are ticked in the list. */
export function messageHref(callId: string): string {
  return `${callPageHref(callId, "progress")}/message`;
}

/** The same, to everybody whom a query lists; without a need, to those who are testing. */
export function messageToListedHref(callId: string, { size, needs }: Partial<ProgressQuery>): string {
  const asked = searchOf({ size, needs });
  asked.set("to", "listed");
  return `${messageHref(callId)}?${asked}`;
}

function searchOf({ size, needs, page }: Partial<ProgressQuery>): URLSearchParams {
  const asked = new URLSearchParams();
  if (size !== undefined) asked.set("size", size);
  if (needs !== undefined) asked.set("needs", needs);
  if (page !== undefined && page > 1) asked.set("page", String(page));
  return asked;
}
