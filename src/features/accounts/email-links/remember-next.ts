import "server-only";
import { cookies } from "next/headers";
import { environment } from "@/server/environment";
import { sameOriginPath } from "@/server/same-origin-path";

const nextCookie = "sizewright-next";
const COOKIE_SECONDS = 60 * 60;
const PATH = "/email-links";

/** Remembers in this browser where somebody was going, so that it is neither stored nor mailed. */
export async function rememberNext(next: string): Promise<void> {
  (await cookies()).set(nextCookie, next, {
    ...{ httpOnly: true, sameSite: "lax", path: PATH, maxAge: COOKIE_SECONDS },
    secure: environment().NEXTAUTH_URL.startsWith("https://"),
  });
}

/** Where they were going, if this is the same browser. */
export async function takeNext(): Promise<string> {
  const jar = await cookies();
  const next = sameOriginPath(jar.get(nextCookie)?.value);
  jar.set(nextCookie, "", { path: PATH, maxAge: 0 });
  return next;
}
