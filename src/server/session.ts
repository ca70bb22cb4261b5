import "server-only";
import { cookies } from "next/headers";
import { encode } from "next-auth/jwt";
import { environment } from "./environment";
import { sessionCookie, SESSION_SECONDS } from "./session-options";

export interface SessionOwner {
  readonly accountId: string;
  readonly name: string;
  readonly sessionVersion: number;
}

/** Gives this browser a session, as next-auth's own sign-in would. */
export async function startSession({ accountId, name, sessionVersion }: SessionOwner): Promise<void> {
  const token = await encode({
    token: { sub: accountId, name, sessionVersion },
    secret: environment().NEXTAUTH_SECRET,
    maxAge: SESSION_SECONDS,
  });
  const { name: cookie, options } = sessionCookie();
  (await cookies()).set(cookie, token, { ...options, maxAge: SESSION_SECONDS });
}

/** Removes the session from this browser. */
export async function endSession(): Promise<void> {
  const { name, options } = sessionCookie();
  (await cookies()).set(name, "", { ...options, maxAge: 0 });
}
