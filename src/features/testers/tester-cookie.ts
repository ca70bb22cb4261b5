import "server-only";
import { cookies } from "next/headers";
import { environment } from "@/server/environment";
import { linkKey } from "@/server/link-key";
import { testerCookieName } from "./tester-cookie-name";

const KEPT_SECONDS = 400 * 24 * 60 * 60;

/**
 * Lets this browser in to a tester's pages, and to nothing else. Sent to every address, for her invitation and the list
 * of her tests ask for it too.
 */
export async function letInTester({ testerId, linkVersion }: { testerId: string; linkVersion: number }): Promise<void> {
  (await cookies()).set(testerCookieName(testerId), linkKey("tester", { id: testerId, version: linkVersion }), {
    httpOnly: true,
    sameSite: "lax",
    secure: environment().NEXTAUTH_URL.startsWith("https://"),
    path: "/",
    maxAge: KEPT_SECONDS,
  });
}
