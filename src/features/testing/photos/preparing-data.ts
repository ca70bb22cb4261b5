import "server-only";
import { patternScope, type PatternAccess } from "@/features/patterns/access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { testerScope, type TesterAccess } from "../home/access";

/** True while photos of a tester wait for their sizes. */
export async function arePhotosPreparing(access: TesterAccess): Promise<boolean> {
  return await isReceived({ tester: testerScope(access) });
}

/** True while photos of a pattern's sample wait for their sizes. */
export async function isSamplePreparing(access: PatternAccess): Promise<boolean> {
  return await isReceived({ pattern: patternScope(access) });
}

async function isReceived(owner: Prisma.PhotoWhereInput): Promise<boolean> {
  return (await database().photo.count({ where: { ...owner, state: "received" } })) > 0;
}
