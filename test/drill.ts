/** `npm run drill -- forget`: plays something that must never go wrong, on a real PostgreSQL, and fails where it does. */
import { spawn } from "node:child_process";
import { once } from "node:events";
import { chmodSync, mkdirSync, mkdtempSync, openSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Client } from "pg";
import { applyMigrations, readMigrations } from "@/server/migrations";
import { startOwnPostgres } from "@/start/own-postgres";
import { startMailServer, refusal } from "./database/mail-server";
import { tracesInFiles } from "./drill/find-traces";
import { faultsOf, type Searched } from "./drill/searched";

const MARKER = `mark${Date.now().toString(36)}er`;

async function forget(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "sizewright-drill-"));
  chmodSync(folder, 0o755);
  const [files, logs] = [join(folder, "files"), join(folder, "logs")];
  for (const path of [files, logs]) mkdirSync(path);
  const postgres = await startOwnPostgres({ folder: join(folder, "postgres"), temporary: true });
  const mail = await startMailServer();
  // The address of the account is refused in words that hold it.
  mail.behaviour = { recipient: (address) => (address.startsWith("account-") ? refusal(550, `no ${address}`) : null) };
  const result = join(folder, "result.json");
  const environment = {
    ...{ ...process.env, DATABASE_URL: postgres.url, SIZEWRIGHT_FOLDER: files, LOG_LEVEL: "debug" },
    ...{ NEXTAUTH_URL: "http://localhost:3000", NEXTAUTH_SECRET: "0123456789abcdef0123456789abcdef" },
    ...{ SMTP_URL: `smtp://127.0.0.1:${mail.port}`, MAIL_FROM: "Sizewright <mail@sizes.example>" },
    ...{ DRILL_MARKER: MARKER, DRILL_RESULT: result },
  };
  const run = (flags: readonly string[], log: string) => {
    const out = openSync(join(logs, log), "w");
    return spawn(process.execPath, [...flags], { env: environment, stdio: ["ignore", out, out] });
  };
  try {
    const client = new Client({ connectionString: postgres.url });
    await client.connect();
    await applyMigrations(client, readMigrations("prisma/migrations"));
    await client.end();
    const worker = run(["--conditions", "react-server", "--import", "tsx", "src/worker/main.ts"], "worker.log");
    const play = ["--import", "./test/drill/without-server-only.mjs", "--import", "tsx", "test/drill/play-forget.ts"];
    await once(run(play, "play.log"), "exit");
    worker.kill("SIGTERM");
    await once(worker, "exit");
    report(await withLogs(result, { logs, postgres: join(folder, "postgres") }), { logs });
  } finally {
    await mail.stop();
    await postgres.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function withLogs(result: string, folders: Readonly<Record<string, string>>): Promise<Searched[]> {
  const searched = readResult(result);
  const logs = await tracesInFiles({ "logs of worker and pages": folders["logs"] ?? "" }, MARKER);
  const text = readFileSync(join(folders["postgres"] ?? "", "postgresql.log"), "utf8");
  const database = { place: "log of PostgreSQL", found: text.includes(MARKER) ? 1 : 0 };
  return [...searched, ...[...logs, database].map(({ place, found }) => ({ place, before: found, after: found }))];
}

function readResult(result: string): Searched[] {
  try {
    return JSON.parse(readFileSync(result, "utf8")) as Searched[];
  } catch {
    return [];
  }
}

function report(searched: readonly Searched[], { logs }: { readonly logs: string }): void {
  if (searched.length < 3) console.log(readFileSync(join(logs, "play.log"), "utf8").slice(-3_000));
  console.log("place                          with the marker before   after");
  for (const { place, before, after } of searched)
    console.log(`${place.padEnd(30)} ${String(before).padStart(22)} ${String(after).padStart(7)}`);
  const faults = faultsOf(searched);
  for (const fault of faults) console.error(fault);
  console.log(faults.length === 0 ? "Nothing of the forgotten people is left." : "The drill failed.");
  if (faults.length > 0) process.exitCode = 1;
}

const [what] = process.argv.slice(2);
if (what === "forget") await forget();
else {
  console.error("Say what to play: npm run drill -- forget");
  process.exitCode = 1;
}
