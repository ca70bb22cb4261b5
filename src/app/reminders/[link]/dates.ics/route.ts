import { calendarAnswer } from "@/features/testing/calendar/calendar-answer";
import { loadLinkedCalendar } from "@/features/testing/calendar/calendar-loaders";

export async function GET(_request: Request, { params }: RouteContext<"/reminders/[link]/dates.ics">) {
  return await calendarAnswer(loadLinkedCalendar((await params).link));
}
