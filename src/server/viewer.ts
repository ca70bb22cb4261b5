import "server-only";
import { getServerSession } from "next-auth";
import { redirect } from "next/navigation";
import { cache } from "react";
import { sessionOptions } from "./session-options";
import { database } from "./database";

/** The signed-in person of this request. */
export interface Viewer {
  readonly accountId: string;
  readonly name: string;
  readonly email: string;
  readonly unit: "cm" | "in";
}

/** Who is asking, null for a visitor. A session whose version is no longer the account's is no session. */
export const optionalViewer = cache(async (): Promise<Viewer | null> => {
  const session = await getServerSession(sessionOptions());
  const accountId = session?.user?.accountId;
  if (accountId === undefined) return null;
  const account = await database().account.findUnique({
    where: { id: accountId, sessionVersion: session?.user?.sessionVersion },
    select: { id: true, name: true, email: true, unit: true },
  });
  if (account === null) return null;
  return { accountId: account.id, name: account.name, email: account.email, unit: account.unit === "in" ? "in" : "cm" };
});

/** Who is asking; a visitor is sent to sign in. */
export async function requireViewer(): Promise<Viewer> {
  const viewer = await optionalViewer();
  if (viewer === null) redirect("/sign-in");
  return viewer;
}
