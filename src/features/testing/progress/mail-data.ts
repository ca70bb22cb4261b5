import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import type { Prisma } from "@/generated/prisma/client";

/** Where clause of mail to a tester of the call; what was sent to the designer about them is not. */
export function mailToTester(
  access: CallAccess,
  testerId: string,
): Prisma.MessageWhereInput & { readonly kind?: never } {
  return { testerId, accountId: null, call: callEditScope(access) };
}
