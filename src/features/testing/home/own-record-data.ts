import "server-only";
import { designerOfPattern } from "@/features/patterns/data";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { wholeAddress } from "@/server/whole-address";
import { photoAddress } from "../photos/photo-address";
import { testerScope, type TesterAccess } from "./access";

/** Everything that is stored about a tester, as they can take it along. @throws {AppError} "not-found" if access was lost. */
export async function ownRecord(access: TesterAccess) {
  const [record] = await testerRecords(testerScope(access));
  if (record === undefined) throw new AppError("not-found");
  return record;
}

/** The same of several tests. @param where by the proof of whoever asks. */
export async function testerRecords(where: Prisma.TesterWhereInput) {
  const rows = await database().tester.findMany({ where, orderBy: { invitedAt: "asc" }, select: RECORD });
  return rows.map(({ id, call, note, photos, views, messages, body, photoConsents, habits, ...row }) => ({
    test: call.title,
    designer: call.pattern.memberships[0]?.account.name ?? null,
    ...row,
    bodyCm: body?.measurements ?? null,
    hasDesignersNote: note !== "",
    photos: photos.map(({ id: photoId, ...photo }) => ({
      ...photo,
      address: wholeAddress(photoAddress(photoId, 1920)),
    })),
    photosMayBeUsedFor: photoConsents,
    shownByEarlierTests: habits.map(({ shown, from }) => ({ test: from.call.title, shown })),
    mail: messages.map(({ accountId, ...message }) => ({
      ...message,
      to: accountId === null ? "you" : "the designer",
    })),
    whoLooked: views.map(({ viewer, ...view }) => ({ ...view, who: viewer?.name ?? null })),
    yourPage: wholeAddress(`/testing/${id}`),
  }));
}

const PLACED = { place: true, createdAt: true } as const;

const RECORD = {
  ...{ id: true, code: true, size: true, unit: true, terms: true, timeZone: true, sizesShown: true, dates: true },
  ...{ invitedAt: true, invitationExpiresAt: true, acceptedAt: true, declinedAt: true, withdrawnAt: true },
  ...{ stoppedAt: true, stoppedByDesigner: true, freedAt: true, readRevisionNumber: true, note: true },
  ...{ isWornByChild: true, reminders: true, agreedAt: true, habitsSince: true },
  agreement: { select: { text: true } },
  sentReminders: { orderBy: { writtenAt: "asc" }, select: { kind: true, writtenAt: true } },
  call: {
    select: {
      title: true,
      pattern: {
        select: { memberships: designerOfPattern },
      },
    },
  },
  contact: { select: { name: true, email: true, creditName: true } },
  body: { select: { measurements: true } },
  reward: { select: { patternSentAt: true, namedAt: true, payment: true } },
  reports: { orderBy: { version: "asc" }, select: { version: true, document: true, typed: true, createdAt: true } },
  reportDraft: { select: { typed: true, updatedAt: true } },
  milestones: { orderBy: { createdAt: "asc" }, select: { status: true, note: true, createdAt: true } },
  questions: { orderBy: { createdAt: "asc" }, select: { ...PLACED, asks: true, answer: true, answeredAt: true } },
  troubles: { orderBy: { createdAt: "asc" }, select: { ...PLACED, happened: true, did: true } },
  numberQuestions: {
    orderBy: { createdAt: "asc" },
    select: { field: true, about: true, asks: true, answer: true, changedTo: true, createdAt: true, answeredAt: true },
  },
  correctionAnswers: {
    select: { answer: true, worked: true, answeredAt: true, correction: { select: { text: true } } },
  },
  readCorrections: { select: { readAt: true, correction: { select: { text: true } } } },
  readAnswers: { select: { answeredAt: true, question: { select: { asks: true } } } },
  photos: {
    orderBy: { createdAt: "asc" },
    select: {
      ...{ id: true, view: true, note: true, width: true, height: true, createdAt: true, shownSince: true },
      trouble: { select: { happened: true } },
    },
  },
  habits: { select: { shown: true, from: { select: { call: { select: { title: true } } } } } },
  photoConsents: { select: { use: true, givenAt: true } },
  messages: {
    orderBy: { createdAt: "asc" },
    select: { kind: true, createdAt: true, sentAt: true, content: true, accountId: true },
  },
  views: { orderBy: { seenAt: "desc" }, select: { kind: true, seenAt: true, viewer: { select: { name: true } } } },
} satisfies Prisma.TesterSelect;
