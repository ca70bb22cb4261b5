import "server-only";
import { headers } from "next/headers";
import { getServerSession } from "next-auth";
import { redirect } from "next/navigation";
import { connection } from "next/server";
import { cache } from "react";
import { database } from "./database";
import { isDatabaseUnavailable } from "./database-unavailable";
import { AppError } from "./errors";
import { sameOriginPath, withNext } from "./same-origin-path";
import { sessionOptions } from "./session-options";

/** The signed-in person of this request. */
export interface Viewer {
  readonly accountId: string;
  readonly name: string;
  readonly email: string;
  readonly unit: "cm" | "in";
}

/** The signed-in person; null for a visitor. @throws {AppError} "database-away" when that cannot be determined. */
export const optionalViewer = cache(async (): Promise<Viewer | null> => {
  // Before the settings are read, because pages rendered during the build have none.
  await connection();
  const session = await getServerSession(sessionOptions());
  return session?.user === undefined ? null : viewerOf(session.user);
});

/** The person of a session. One whose version is no longer the account's is no session. */
export async function viewerOf(session: { accountId: string; sessionVersion: number }): Promise<Viewer | null> {
  try {
    const account = await database().account.findUnique({
      where: { id: session.accountId, sessionVersion: session.sessionVersion },
      select: { id: true, name: true, email: true, unit: true },
    });
    if (account === null) return null;
    const { id: accountId, ...person } = account;
    return { accountId, ...person };
  } catch (error) {
    throw isDatabaseUnavailable(error) ? new AppError("database-away") : error;
  }
}

/** The signed-in person; visitors are redirected to sign in, and from there back to their page. */
export async function requireViewer(): Promise<Viewer> {
  const viewer = await optionalViewer();
  if (viewer !== null) return viewer;
  redirect(withNext("/sign-in", sameOriginPath((await headers()).get("x-sizewright-path"))));
}
