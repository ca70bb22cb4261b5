import pino from "pino";

/** One JSON line per event. Never a body, a query or a document, because they contain measurements of people. */
export const log = pino({ level: process.env.LOG_LEVEL ?? "info", base: null });
