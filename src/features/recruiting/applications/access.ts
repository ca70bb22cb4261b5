import "server-only";
import { cache } from "react";
import type { LinkTarget } from "@/features/mail/schema";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { linkTo, openedId } from "@/server/link-key";
import type { Proof } from "@/server/proof";
import type { Viewer } from "@/server/viewer";

/** Proof that somebody may see and change their own application, by its link or by their account. */
export interface ApplicationAccess extends Proof<"application"> {
  readonly applicationId: string;
  readonly callId: string;
}

/** @throws {AppError} "not-found" if the link does not belong to an application. */
export const applicationAccess = cache(async (link: string): Promise<ApplicationAccess> => {
  const id = openedId(link, "application", LINK_VERSION);
  const row = id === null ? null : await database().application.findUnique({ where: { id }, select: OWN });
  if (row === null) throw new AppError("not-found");
  return { applicationId: row.id, callId: row.callId } as ApplicationAccess;
});

/** The link of the application that the viewer made while signed in. @returns null if there is none. */
export async function ownApplicationLink(viewer: Viewer, callId: string): Promise<string | null> {
  const row = await database().application.findFirst({
    where: { callId, accountId: viewer.accountId },
    select: { id: true },
  });
  return row === null ? null : applicationLink(row.id);
}

/** The last part of an application's address: for whose application it is, or for an editor of its call to send it to them. */
export function applicationLink(applicationId: string): string {
  return linkTo("application", { id: applicationId, version: LINK_VERSION });
}

/** The same for a message, which makes the link when it is sent. */
export function applicationTarget(id: string): LinkTarget {
  return { before: "/applications/", key: "application", id, version: LINK_VERSION };
}

/** Where clause of the application that was proved. */
export function applicationScope({ applicationId, callId }: ApplicationAccess): Prisma.ApplicationWhereUniqueInput {
  return { id: applicationId, callId };
}

const OWN = { id: true, callId: true } as const;
/** An application's link ends with the application. */
const LINK_VERSION = 1;
