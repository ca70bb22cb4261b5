import "server-only";
import { cache } from "react";
import { z } from "zod";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import type { Proof } from "@/server/proof";

/** Proof that a call is published, so that everybody may read it. */
export interface PublishedCall extends Proof<"published call"> {
  readonly callId: string;
}

/** Where clause of every call that everybody may read. */
export const PUBLISHED = { listing: { publishedAt: { not: null } } } as const satisfies Prisma.CallWhereInput;

/** @throws {AppError} "not-found" if the call does not exist or is not published. */
export const publishedCall = cache(async (callId: string): Promise<PublishedCall> => {
  if (!z.uuid().safeParse(callId).success) throw new AppError("not-found");
  const call = await database().call.findFirst({
    where: { id: callId, ...PUBLISHED },
    select: { id: true },
  });
  if (call === null) throw new AppError("not-found");
  return { callId } as PublishedCall;
});

/** Where clause of the published call, for reading. */
export function publishedScope({ callId }: PublishedCall): Prisma.CallWhereUniqueInput {
  return { id: callId, ...PUBLISHED };
}

/** Where clause of the published call while it takes applications. */
export function applyingScope({ callId }: PublishedCall, now: Date): Prisma.CallWhereUniqueInput {
  return { id: callId, status: "open", listing: { publishedAt: { not: null }, applyUntil: { gt: now } } };
}
