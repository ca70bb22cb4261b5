import "server-only";
import { publishedScope, type PublishedCall } from "@/features/recruiting/listing/access";
import { testerScope, type TesterAccess } from "@/features/testing/home/access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { PAGE_PARTS } from "../schema";

/** What a size needs of a yarn. */
export interface YarnForSize {
  /** Id in the pattern. */
  readonly yarn: string;
  /** Nine makers in ten need no more. */
  readonly upperMetres: number;
}

/** What a tester's size needs of each yarn by the newest analysis of their call; none where it is not known yet. */
export async function yarnForTester(access: TesterAccess, size: string): Promise<YarnForSize[]> {
  return await yarnForSize({ testers: { some: testerScope(access) } }, size);
}

/** The same for whoever reads the public page of a call. */
export async function yarnForReader(published: PublishedCall, size: string): Promise<YarnForSize[]> {
  return await yarnForSize(publishedScope(published), size);
}

async function yarnForSize(call: Prisma.CallWhereInput, size: string): Promise<YarnForSize[]> {
  // A test of some pieces needs less, and nobody knows how much.
  const ofWhole = { AND: [call, { pieces: { isEmpty: true } }] };
  const row = await database().analysis.findFirst({
    where: { call: ofWhole, status: "done" },
    orderBy: [{ callVersion: "desc" }, { createdAt: "desc" }],
    select: { yarn: true },
  });
  const found = PAGE_PARTS.yarn.safeParse(row);
  if (!found.success) return [];
  return found.data.yarn.flatMap(({ yarn, sizes }) => {
    const upperMetres = sizes.find((need) => need.size === size)?.upperMetres;
    return upperMetres == null ? [] : [{ yarn, upperMetres }];
  });
}
