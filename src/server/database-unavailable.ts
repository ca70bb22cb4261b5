/**
 * Of the system, of PostgreSQL (class 08, shutting down, starting, too many connections) and of Prisma (among them that no
 * connection came free in time, and that a transaction could not start or ran out of its time); and
 * our own.
 */
const AWAY_CODES = new Set(
  "ECONNREFUSED ECONNRESET EPIPE ETIMEDOUT ENOTFOUND EAI_AGAIN EHOSTUNREACH 57P01 57P02 57P03 53300 P1001 P1002 P1008 P1017 P2024 P2028 database-away".split(
    " ",
  ),
);
const AWAY_KINDS = new Set(["DatabaseNotReachable", "ConnectionClosed", "SocketTimeout", "TooManyConnections"]);
/** node-postgres gives these no code. */
const AWAY_WORDS =
  /Connection terminated|timeout exceeded when trying to connect|Client has encountered a connection error/;

/** Whether an error, or what caused it, says that the database does not answer; trying again later may help. */
export function isDatabaseUnavailable(error: unknown): boolean {
  if (typeof error !== "object" || error === null) return false;
  if ("code" in error && typeof error.code === "string") {
    if (AWAY_CODES.has(error.code) || error.code.startsWith("08")) return true;
  }
  if ("kind" in error && typeof error.kind === "string" && AWAY_KINDS.has(error.kind)) return true;
  if (error instanceof Error && AWAY_WORDS.test(error.message)) return true;
  return "cause" in error && isDatabaseUnavailable(error.cause);
}
