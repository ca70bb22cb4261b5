import { chmodSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { freePort } from "../src/start/free-port";
import { startOwnPostgres } from "../src/start/own-postgres";
import { runServer } from "./running-server";

/** The production build on a free port, over a PostgreSQL of its own; the tests find both in the environment. */
export default async function setUp(): Promise<() => Promise<void>> {
  const folder = mkdtempSync(join(tmpdir(), "sizewright-e2e-"));
  chmodSync(folder, 0o755);
  const postgres = await startOwnPostgres({ folder, temporary: true });
  process.env.DATABASE_URL = postgres.url;
  process.env.NEXTAUTH_SECRET = "a secret of the browser tests, for nothing else";
  process.env.SIZEWRIGHT_FOLDER = folder;
  const { DATABASE_URL, NEXTAUTH_SECRET } = process.env;
  const settings = { DATABASE_URL, NEXTAUTH_SECRET, PORT: String(await freePort()), SIZEWRIGHT_FOLDER: folder };
  try {
    const server = await runServer({ settings });
    process.env.NEXTAUTH_URL = server.address;
    return async () => {
      const code = await server.stop();
      await postgres.stop();
      if (code !== 0) throw new Error(`The server did not end cleanly: exit code ${code}.`);
    };
  } catch (error) {
    await postgres.stop();
    throw error;
  }
}
