import "server-only";
import PgBoss from "pg-boss";
import type { Connection } from "./transaction";

/** What the worker does, each job with the id of the row that it is about. */
export const QUEUES = ["reckon-call", "reckon-plan", "reckon-grading"] as const;

export type Queue = (typeof QUEUES)[number];

/**
 * Asks the worker for something in the caller's own transaction: the job stands or falls with what it is about, and is
 * seen by the worker only once that can be read.
 */
export async function enqueue(connection: Connection, queue: Queue, id: string): Promise<void> {
  const sender = new PgBoss({ db: { executeSql: (sql, values) => run(connection, sql, values) } });
  if ((await sender.send(queue, { id })) === null) throw new Error(`there is no queue “${queue}”`);
}

async function run(connection: Connection, sql: string, values: unknown[]): Promise<{ rows: unknown[] }> {
  return { rows: await connection.$queryRawUnsafe<unknown[]>(sql, ...values) };
}

/** A try that failed is repeated after a while, twice. */
const TRIES = { retryLimit: 2, retryDelay: 5 };

/** The queues themselves, in a schema of their own beside the application's. @returns what works them off, started. */
export async function openQueues(connectionString: string): Promise<PgBoss> {
  const boss = new PgBoss({ connectionString, application_name: "sizewright worker" });
  await boss.start();
  for (const queue of QUEUES) await boss.createQueue(queue, { name: queue, ...TRIES });
  return boss;
}
