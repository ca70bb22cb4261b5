import "server-only";
import { createHash } from "node:crypto";
import { Pool } from "pg";
import { PrismaClient } from "@/generated/prisma/client";
import { environment } from "./environment";
import { log } from "./log";
import { QueriesInTurn } from "./queries-in-turn";

declare global {
  var sizewrightPool: Pool | undefined;
  var sizewrightDatabase: PrismaClient | undefined;
}

/** Also how long a request waits for one of the pool's connections: a hundred at once are answered in turn, not refused. */
const CONNECT_WITHIN_MS = 30_000;

function connect(): Pool {
  const made = new Pool({
    connectionString: environment().DATABASE_URL,
    connectionTimeoutMillis: CONNECT_WITHIN_MS,
    application_name: "sizewright",
    // Prisma's adapter writes moments without their zone and reads them as UTC, whatever zone the server keeps. A statement that
    // is kept is planned once: planning the largest ones anew for each page takes longer than running them.
    options: "-c TimeZone=UTC -c plan_cache_mode=force_generic_plan",
  });
  // An idle connection that the server drops is removed from the pool; without a listener, the event would end this process.
  made.on("error", ({ message }) => log.warn({ reason: message }, "database connection lost"));
  return made;
}

/** The one pool of this process, filled at first use; kept across reloads in development. */
export function pool(): Pool {
  globalThis.sizewrightPool ??= connect();
  return globalThis.sizewrightPool;
}

/** The one client over that pool. Its errors do not repeat queries, which may contain measurements of people. */
export function database(): PrismaClient {
  globalThis.sizewrightDatabase ??= new PrismaClient({
    adapter: new QueriesInTurn(pool(), { statementNameGenerator: statementName }),
    errorFormat: "minimal",
    // A read of rows with their relations is a transaction too, and waits for its connection no longer than this.
    transactionOptions: { maxWait: CONNECT_WITHIN_MS },
  });
  return globalThis.sizewrightDatabase;
}

/** A list of some length in a query: each length is another text. */
const LIST_OF_VALUES = /IN \(\$\d+,/;

/**
 * The name under which a connection keeps a query that it has parsed and planned; none for queries of lists, of which there
 * would be too many.
 */
function statementName({ sql }: { readonly sql: string }): string {
  return LIST_OF_VALUES.test(sql) ? "" : createHash("sha1").update(sql).digest("base64url");
}
