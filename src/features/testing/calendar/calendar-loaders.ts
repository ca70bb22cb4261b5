import "server-only";
import { remindersAccess } from "@/features/recruiting/invitations/reminders-access";
import { testerAccess } from "../home/access";
import { readLinkedCalendar, readOwnCalendar } from "./calendar-data";
import type { CalendarDates } from "./calendar-file";

/** A tester's dates. @throws {AppError} "not-found" for anybody else, and where there are none. */
export async function loadOwnCalendar(testerId: string): Promise<CalendarDates> {
  return await readOwnCalendar(await testerAccess(testerId));
}

/** The same by the link of a reminder. */
export async function loadLinkedCalendar(link: string): Promise<CalendarDates> {
  return await readLinkedCalendar(await remindersAccess(link));
}
