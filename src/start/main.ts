import { accessSync, constants, existsSync, mkdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { bucketProblem } from "@/server/photo-bucket";
import { MigrationError } from "@/server/migrations";
import { storedSecret } from "./stored-secret";
import { keepWorker } from "./keep-worker";
import { migrateDatabase } from "./migrate-database";
import { startOwnPostgres } from "./own-postgres";
import { seedDemo } from "./own-programs";
import { readSettings, type Settings } from "./settings";
import { explained, StartError } from "./start-error";
import { openWebServer } from "./web-server";

const ROOT = resolve(import.meta.dirname, "../..");
const NEXT_PORTS = 20;

/** How to stop each part that runs, in the order in which they are stopped. */
interface Stops {
  web?: () => Promise<void>;
  worker?: () => Promise<void>;
  postgres?: () => Promise<void>;
}

/** Everything in order: port, database, migrations, worker, demo data, pages. `stops` gets what must be stopped again. */
async function start(settings: Settings, stops: Stops, signal: AbortSignal): Promise<string> {
  const { mode, host, port } = settings;
  if (mode !== "dev" && !existsSync(join(ROOT, ".next", "BUILD_ID"))) {
    throw new StartError("Sizewright is not built yet. Run npm run build first, or npm run demo, which does both.");
  }
  mkdirSync(settings.folder, { recursive: true });
  accessSync(settings.folder, constants.R_OK | constants.W_OK | constants.X_OK);
  const web = await openWebServer({ host, port, further: mode === "demo" ? NEXT_PORTS : 0 });
  stops.web = web.close;
  const databaseUrl = settings.databaseUrl ?? (await ownDatabase(settings.folder, stops, signal));
  const address = settings.address ?? `http://localhost:${web.port}`;
  process.env.DATABASE_URL = databaseUrl;
  process.env.SIZEWRIGHT_FOLDER = settings.folder;
  process.env.NEXTAUTH_URL = address;
  process.env.NEXTAUTH_SECRET = settings.secret ?? storedSecret(join(settings.folder, "secret"));
  process.env.SIZEWRIGHT_DEMO = mode === "demo" ? "on" : "off";
  signal.throwIfAborted();
  await migrateDatabase(databaseUrl, join(ROOT, "prisma", "migrations"));
  signal.throwIfAborted();
  await sayIfBucketIsAway(settings.photosUrl);
  signal.throwIfAborted();
  stops.worker = (await keepWorker(ROOT)).stop;
  signal.throwIfAborted();
  if (mode === "demo") await seedDemo(ROOT);
  signal.throwIfAborted();
  await web.serve({ root: ROOT, dev: mode === "dev", trustedProxies: settings.trustedProxies });
  return address;
}

/** Everything but photos works without the bucket, so the start goes on. */
async function sayIfBucketIsAway(photosUrl: string | undefined): Promise<void> {
  const problem = photosUrl === undefined ? null : await bucketProblem(photosUrl);
  if (problem !== null) console.error(`${problem}\nUntil then, photos can’t be sent or seen; everything else works.`);
}

async function ownDatabase(folder: string, stops: Stops, signal: AbortSignal): Promise<string> {
  const postgres = await startOwnPostgres({ folder, signal });
  stops.postgres = postgres.stop;
  return postgres.url;
}

async function main(): Promise<void> {
  process.chdir(ROOT);
  process.env.NEXT_TELEMETRY_DISABLED = "1";
  if (existsSync(".env")) process.loadEnvFile(".env");
  const stops: Stops = {};
  const stopping = new AbortController();
  const asked = new Promise<void>((resolve) => {
    for (const signal of ["SIGTERM", "SIGINT", "SIGHUP"] as const) {
      process.on(signal, () => {
        stopping.abort();
        resolve();
      });
    }
  });
  try {
    const settings = readSettings(process.argv.slice(2), process.env);
    const address = await start(settings, stops, stopping.signal);
    console.log(`\nSizewright is ready: ${address}\n`);
    await asked;
  } catch (caught) {
    if (!stopping.signal.aborted) {
      const error = explained(caught);
      process.exitCode = 1;
      console.error(error instanceof StartError || error instanceof MigrationError ? error.message : error);
    }
  }
  for (const stop of [stops.web, stops.worker, stops.postgres]) await stop?.();
  process.exit();
}

await main();
