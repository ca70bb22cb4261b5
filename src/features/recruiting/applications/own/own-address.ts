import "server-only";
import { wholeAddress } from "@/server/whole-address";
import { applicationLink } from "../access";

/** The whole address of an applicant's own page; see `applicationLink` for whom it is. */
export function ownApplicationAddress(applicationId: string): string {
  return wholeAddress(`/applications/${applicationLink(applicationId)}`);
}
