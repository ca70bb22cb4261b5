import { calendarAnswer } from "@/features/testing/calendar/calendar-answer";
import { loadOwnCalendar } from "@/features/testing/calendar/calendar-loaders";

export async function GET(_request: Request, { params }: RouteContext<"/testing/[testerId]/dates.ics">) {
  return await calendarAnswer(loadOwnCalendar((await params).testerId));
}
