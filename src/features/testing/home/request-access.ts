import "server-only";
import { cookies } from "next/headers";
import { cache } from "react";
import { optionalViewer } from "@/server/viewer";
import { testerProof, type Asker, type TesterAccess } from "./access";
import { testerCookieName } from "./tester-cookie-name";

/** Proves that the request comes from this tester, as `testerProof` does. */
export const testerAccess = cache(
  async (testerId: string): Promise<TesterAccess> => await testerProof(testerId, await asker(testerId)),
);

/** Who makes this request, for the pages of a tester. */
export async function asker(testerId: string): Promise<Asker> {
  const viewer = await optionalViewer();
  const key = (await cookies()).get(testerCookieName(testerId))?.value ?? "";
  return { accountId: viewer?.accountId ?? null, key };
}
