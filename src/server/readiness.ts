import "server-only";
import { join } from "node:path";
import { pool } from "./database";
import { isDatabaseUnavailable } from "./database-unavailable";
import { MigrationError, pendingMigrations, readMigrations } from "./migrations";

export interface Readiness {
  readonly ready: boolean;
  readonly says: string;
}

const FOLDER = join(process.cwd(), "prisma", "migrations");

/** Whether the database answers and has all migrations. */
export async function readiness(): Promise<Readiness> {
  try {
    const pending = await pendingMigrations(pool(), readMigrations(FOLDER));
    if (pending.length === 0) return { ready: true, says: "The database is responding and up to date." };
    return {
      ready: false,
      says: `The database is missing ${pending.length} migrations. Restart Sizewright to apply them.`,
    };
  } catch (error) {
    if (error instanceof MigrationError) return { ready: false, says: error.message };
    if (isDatabaseUnavailable(error)) return { ready: false, says: "The database is not responding." };
    throw error;
  }
}
