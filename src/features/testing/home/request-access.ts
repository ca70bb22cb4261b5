import "server-only";
import { cookies } from "next/headers";
import { cache } from "react";
import { optionalViewer } from "@/server/viewer";
import { testerProof, type TesterAccess } from "./access";
import { testerCookieName } from "./tester-cookie-name";

/** Proves that the request comes from this tester, as `testerProof` does. */
export const testerAccess = cache(async (testerId: string): Promise<TesterAccess> => {
  const viewer = await optionalViewer();
  const key = (await cookies()).get(testerCookieName(testerId))?.value ?? "";
  return await testerProof(testerId, { accountId: viewer?.accountId ?? null, key });
});
