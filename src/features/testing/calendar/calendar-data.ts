import "server-only";
import { remindersScope, type RemindersAccess } from "@/features/recruiting/invitations/reminders-access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { dayAt } from "@/server/time-zone";
import { wholeAddress } from "@/server/whole-address";
import { testerScope, type TesterAccess } from "../home/access";
import { callTime, testerTime } from "../home/call-time";
import type { CalendarDates } from "./calendar-file";

/** A tester's dates, for themselves. @throws {AppError} "not-found" where there are none. */
export async function readOwnCalendar(access: TesterAccess): Promise<CalendarDates> {
  return await readCalendar(testerScope(access));
}

/** The same for whoever has the link of a reminder. */
export async function readLinkedCalendar(access: RemindersAccess): Promise<CalendarDates> {
  return await readCalendar(remindersScope(access));
}

async function readCalendar(tester: Prisma.TesterWhereUniqueInput): Promise<CalendarDates> {
  const row = await database().tester.findUnique({ where: tester, select: DATED });
  if (row === null) throw new AppError("not-found");
  const { id: testerId, call, stoppedAt, datesVersion } = row;
  const { timeZone, dates } = testerTime(row, callTime(call.listing));
  if (dates === null) throw new AppError("not-found");
  const lastDay = (deadline: Date) => dayAt(new Date(deadline.getTime() - 1), timeZone);
  return {
    ...{ testerId, title: call.title, address: wholeAddress(`/testing/${testerId}`) },
    days: {
      startOn: dayAt(dates.startOn.at, timeZone),
      swatchBy: lastDay(dates.swatchBy.at),
      reportBy: lastDay(dates.reportBy.at),
    },
    isOver: stoppedAt !== null || call.status === "closed",
    sequence: datesVersion + call.statusVersion + (call.listing?.version ?? 0),
  };
}

const DATED = {
  ...{ id: true, dates: true, timeZone: true, stoppedAt: true, datesVersion: true },
  call: {
    select: {
      ...{ title: true, status: true, statusVersion: true },
      listing: { select: { document: true, publishedAt: true, version: true } },
    },
  },
} satisfies Prisma.TesterSelect;
