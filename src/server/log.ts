import pino from "pino";

/** One JSON line an event. Never a body, a query or a document: they hold measurements of people. */
export const log = pino({ level: process.env.LOG_LEVEL ?? "info", base: null });
