import "server-only";
import type { CallAccess } from "@/features/calls/access";
import type { NextStep } from "@/features/calls/call-pages";
import { countWithdrawals } from "./photo-sheet-data";

/** What the designer has to do about photos that may no longer be used, in closed calls, too. */
export async function withdrawalSteps(access: CallAccess): Promise<NextStep[]> {
  const many = await countWithdrawals(access);
  if (many === 0) return [];
  const message =
    many === 1
      ? "A tester no longer allows a use of their photos."
      : `There are ${many} uses of photos that testers no longer allow.`;
  return [{ page: "photos", message, link: "See what to take down" }];
}
