import "server-only";
import type { NextAuthOptions, DefaultSession } from "next-auth";
import { environment } from "./environment";

export const SESSION_SECONDS = 30 * 24 * 60 * 60;

declare module "next-auth" {
  interface Session {
    user?: DefaultSession["user"] & { accountId: string; sessionVersion: number };
  }
  interface User {
    sessionVersion: number;
  }
}

declare module "next-auth/jwt" {
  interface JWT {
    sessionVersion?: number;
  }
}

/** The cookie that holds the session, marked for encrypted connections only where the address is one. */
export function sessionCookie() {
  const secure = environment().NEXTAUTH_URL.startsWith("https://");
  return {
    name: secure ? "__Secure-next-auth.session-token" : "next-auth.session-token",
    options: { httpOnly: true, sameSite: "lax", path: "/", secure },
  } as const;
}

/** Sessions as signed and encrypted tokens in a cookie; the account's session version is what can end one early. */
export function sessionOptions(): NextAuthOptions {
  return {
    secret: environment().NEXTAUTH_SECRET,
    session: { strategy: "jwt", maxAge: SESSION_SECONDS },
    cookies: { sessionToken: sessionCookie() },
    pages: { signIn: "/sign-in", signOut: "/account", error: "/sign-in" },
    providers: [],
    callbacks: {
      jwt: ({ token, user }) => (user ? { ...token, sub: user.id, sessionVersion: user.sessionVersion } : token),
      session: ({ session, token: { sub, sessionVersion } }) =>
        sub === undefined || sessionVersion === undefined
          ? { expires: session.expires }
          : { ...session, user: { ...session.user, accountId: sub, sessionVersion } },
    },
  };
}
