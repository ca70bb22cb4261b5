import "server-only";
import { clientAddress } from "@/server/client-address";
import type { Viewer } from "@/server/viewer";
import { proveAccount } from "./prove-account";

/** Whether this is the signed-in person's password; a try counts as one. @throws {AppError} "too-many-tries". */
export async function isOwnPassword({ accountId, email }: Viewer, password: string): Promise<boolean> {
  const account = await proveAccount({ email, password }, await clientAddress());
  return account?.id === accountId;
}
