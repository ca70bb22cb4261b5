import "server-only";
import { cookies } from "next/headers";
import { environment } from "@/server/environment";
import { linkKey } from "@/server/link-key";
import { testerCookieName } from "./tester-cookie-name";

const COOKIE_SECONDS = 400 * 24 * 60 * 60;

/**
 * Gives this browser access to one tester's pages and nothing else. The cookie is sent to every path, because the invitation
 * and the list of tests read it too.
 */
export async function letInTester({ testerId, linkVersion }: { testerId: string; linkVersion: number }): Promise<void> {
  (await cookies()).set(testerCookieName(testerId), linkKey("tester", { id: testerId, version: linkVersion }), {
    httpOnly: true,
    sameSite: "lax",
    secure: environment().NEXTAUTH_URL.startsWith("https://"),
    path: "/",
    maxAge: COOKIE_SECONDS,
  });
}
