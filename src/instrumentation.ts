import { isDatabaseUnavailable } from "@/server/database-unavailable";
import { markUnavailable } from "@/server/unavailable";

interface FailedRequest {
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
}

/** Called by Next for whatever a page, a route or an action throws, before it is answered. */
export function onRequestError(error: unknown, { headers }: FailedRequest): void {
  const requestId = headers["x-request-id"];
  if (typeof requestId === "string" && isDatabaseUnavailable(error)) markUnavailable(requestId);
}
