import { callPageHref } from "@/features/calls/call-pages";
import type { PlacesQuery } from "./schema";

/** The address of a call's page of sizes and testers, with a query. */
export function placesHref(callId: string, query: PlacesQuery): string {
  // The confirmation of sending is shown once.
  const kept = { ...query, sent: undefined };
  const parameters = new URLSearchParams();
  for (const [name, value] of Object.entries(kept))
    if (value !== undefined && value !== 1) parameters.set(name, String(value));
  return parameters.size === 0 ? callPageHref(callId, "sizes") : `/calls/${callId}/sizes?${parameters}`;
}
