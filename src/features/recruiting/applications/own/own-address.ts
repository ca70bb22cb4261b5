import "server-only";
import { environment } from "@/server/environment";
import { applicationLink } from "../access";

/** The whole address of an applicant's own page; see `applicationLink` for whom it is. */
export function ownApplicationAddress(applicationId: string): string {
  return new URL(`/applications/${applicationLink(applicationId)}`, environment().NEXTAUTH_URL).href;
}
