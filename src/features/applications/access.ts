import "server-only";
import { cache } from "react";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { linkedId, linkTo, opens } from "@/server/link-key";
import type { Proof } from "@/server/proof";
import type { Viewer } from "@/server/viewer";

/** That somebody may see and change her own application, by its link or by her account. */
export interface ApplicationAccess extends Proof<"application"> {
  readonly applicationId: string;
  readonly callId: string;
}

/** @throws {AppError} "not-found" where the link leads to no application, or is not its own. */
export const applicationAccess = cache(async (link: string): Promise<ApplicationAccess> => {
  const id = linkedId(link);
  const row = id === null ? null : await database().application.findUnique({ where: { id }, select: OWN });
  if (row === null || !opens(link, "application", { id: row.id, version: LINK_VERSION }))
    throw new AppError("not-found");
  return { applicationId: row.id, callId: row.callId } as ApplicationAccess;
});

/** The link of an application that the viewer made while she was signed in. @returns null where she made none. */
export async function ownApplicationLink(viewer: Viewer, callId: string): Promise<string | null> {
  const row = await database().application.findFirst({
    where: { callId, accountId: viewer.accountId },
    select: { id: true },
  });
  return row === null ? null : applicationLink(row.id);
}

/** The address's last part by which she comes back to her application. For whoever has just proved that it is hers. */
export function applicationLink(applicationId: string): string {
  return linkTo("application", { id: applicationId, version: LINK_VERSION });
}

/** Where clause of the application that was proved. */
export function applicationScope({ applicationId, callId }: ApplicationAccess): Prisma.ApplicationWhereUniqueInput {
  return { id: applicationId, callId };
}

const OWN = { id: true, callId: true } as const;
/** An application's link ends with the application. */
const LINK_VERSION = 1;
