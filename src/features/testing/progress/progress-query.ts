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
export function progressHref(callId: string, { size, needs, page }: Partial<ProgressQuery>): string {
  const asked = new URLSearchParams();
  if (size !== undefined) asked.set("size", size);
  if (needs !== undefined) asked.set("needs", needs);
  if (page !== undefined && page > 1) asked.set("page", String(page));
  return asked.size === 0 ? callPageHref(callId, "progress") : `/calls/${callId}/progress?${asked}`;
}
