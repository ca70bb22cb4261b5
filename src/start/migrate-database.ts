import { Client } from "pg";
import { applyMigrations, readMigrations } from "@/server/migrations";
import { log } from "@/server/log";
import { StartError } from "./start-error";

/** Brings the database at `url` up to date. @throws {StartError} when it does not answer. */
export async function migrateDatabase(url: string, folder: string): Promise<void> {
  const client = new Client({ connectionString: url, connectionTimeoutMillis: 10_000 });
  try {
    await client.connect();
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new StartError(`The database at DATABASE_URL is not responding: ${why}`);
  }
  try {
    const applied = await applyMigrations(client, readMigrations(folder));
    if (applied.length > 0) log.info({ applied }, "migrations");
  } finally {
    await client.end();
  }
}
