import "server-only";
import { attachment } from "@/server/attachment";
import { AppError } from "@/server/errors";
import { calendarFile, type CalendarDates } from "./calendar-file";

/** A tester's dates as a file, or that there are none. */
export async function calendarAnswer(read: Promise<CalendarDates>): Promise<Response> {
  try {
    const dates = await read;
    return new Response(calendarFile(dates, new Date()), {
      headers: {
        "content-type": "text/calendar; charset=utf-8; method=PUBLISH",
        "content-disposition": attachment([dates.title, "dates"], "ics"),
        "cache-control": "private, no-store",
      },
    });
  } catch (error) {
    if (error instanceof AppError && error.code === "not-found") return new Response(null, { status: 404 });
    throw error;
  }
}
