import "server-only";
import { z } from "zod";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { reminderChoiceSchema } from "../reminders/reminder-choice-schema";
import type { ReminderChoice } from "../reminders/reminder-choice";
import { testerScope, type TesterAccess } from "./access";

/** What is stored about a tester besides the numbers of the report. */
export interface StoredData {
  readonly name: string | null;
  readonly email: string | null;
  /** How they would like to be named: "" for not at all, null until they have said. */
  readonly creditName: string | null;
  /** What the designer noted that they got. */
  readonly hasReward: boolean;
  /** Body measurement → cm. */
  readonly body: Readonly<Record<string, number>>;
  readonly applied: boolean;
  readonly isWornByChild: boolean;
  /** How often they want to be reminded. */
  readonly reminders: ReminderChoice;
  readonly sentReminders: number;
  readonly reports: number;
  readonly milestones: number;
  readonly questions: number;
  readonly troubles: number;
  /** What the designer asked about numbers of their report. */
  readonly numberQuestions: number;
  /** Their answers to corrections. */
  readonly correctionAnswers: number;
  /** Corrections and answers that they marked as read. */
  readonly marks: number;
  readonly photos: number;
  /** Mail to them, and mail to the designer that names them. */
  readonly messages: number;
  readonly hasDraft: boolean;
  /** The designer has written a note about the tester. */
  readonly hasNote: boolean;
  /** They allow that what this test shows of their tape and garment is used in later ones, and in so many it is. */
  readonly habits: { readonly isAllowed: boolean; readonly usedIn: number };
  /** What their own earlier tests showed is used in this one. */
  readonly hasRecord: boolean;
  /** Other testers of the same size who have sent a report. */
  readonly othersInSize: number;
}

const bodySchema = z.record(z.string(), z.number());

export async function storedDataOfTester(access: TesterAccess): Promise<StoredData> {
  const row = await database().tester.findUnique({ where: testerScope(access), select: KEPT });
  if (row === null) throw new AppError("not-found");
  const { contact, body, applicationId, isWornByChild, _count, reportDraft, reward, size, note } = row;
  const call = { id: access.callId, testers: { some: testerScope(access) } };
  const { readCorrections, readAnswers, habits, taughtHabits, ...counted } = _count;
  const othersInSize = await database().tester.count({
    where: { call, size, id: { not: access.testerId }, reports: { some: {} } },
  });
  return {
    name: contact?.name ?? null,
    email: contact?.email ?? null,
    creditName: contact?.creditName ?? null,
    hasReward: reward !== null,
    body: body === null ? {} : bodySchema.parse(body.measurements),
    applied: applicationId !== null,
    isWornByChild,
    reminders: reminderChoiceSchema.parse(row.reminders),
    ...counted,
    marks: readCorrections + readAnswers,
    hasDraft: reportDraft !== null,
    hasNote: note !== "",
    habits: { isAllowed: row.habitsSince !== null, usedIn: taughtHabits },
    hasRecord: habits > 0,
    othersInSize,
  };
}

const KEPT = {
  ...{ size: true, note: true, applicationId: true, contact: true, body: true },
  ...{ isWornByChild: true, reminders: true, habitsSince: true },
  reportDraft: { select: { version: true } },
  reward: { select: { testerId: true } },
  _count: {
    select: {
      ...{ reports: true, milestones: true, questions: true, troubles: true, numberQuestions: true },
      ...{ readCorrections: true, readAnswers: true, correctionAnswers: true, messages: true, photos: true },
      ...{ sentReminders: true, habits: true, taughtHabits: true },
    },
  },
} as const;
