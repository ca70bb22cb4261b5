import { chmodSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Client } from "pg";
import type { TestProject } from "vitest/node";
import { applyMigrations, readMigrations } from "@/server/migrations";
import { startOwnPostgres } from "@/start/own-postgres";

declare module "vitest" {
  interface ProvidedContext {
    /** Of a database that holds all migrations and nothing else, to be copied. */
    templateUrl: string;
  }
}

/** A real PostgreSQL for the tests. */
export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  console.log(`seed of this run: SEED=${process.env.SEED}`);
  const folder = mkdtempSync(join(tmpdir(), "sizewright-tests-"));
  chmodSync(folder, 0o755);
  const postgres = await startOwnPostgres({ folder, temporary: true });
  const client = new Client({ connectionString: postgres.url });
  await client.connect();
  await applyMigrations(client, readMigrations("prisma/migrations"));
  await client.end();
  project.provide("templateUrl", postgres.url);
  return postgres.stop;
}
