import { spawn } from "node:child_process";
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { once } from "node:events";
import { Client } from "pg";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { startOwnPostgres } from "@/start/own-postgres";

// Making data takes PostgreSQL seconds, and each of these tests makes it anew.
vi.setConfig({ testTimeout: 120_000 });

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "sizewright-own-"));
  chmodSync(folder, 0o755);
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

async function query(url: string, statement: string): Promise<unknown[]> {
  const client = new Client({ connectionString: url, connectionTimeoutMillis: 5_000, query_timeout: 10_000 });
  await client.connect();
  try {
    return (await client.query(statement)).rows;
  } finally {
    await client.end();
  }
}

function postmasterPid(): number {
  return Number(readFileSync(join(folder, "database", "data", "postmaster.pid"), "utf8").split("\n", 1)[0]);
}

/** Another process that starts the same, and says the address. */
async function startElsewhere() {
  const child = spawn(process.execPath, ["--import", "tsx", resolve("test/start/start-and-stay.ts"), folder]);
  const [said] = await once(child.stdout, "data");
  return { child, url: String(said).trim() };
}

describe("a PostgreSQL of our own", () => {
  it("keeps what was written over a stop and a start", async () => {
    const first = await startOwnPostgres({ folder });
    await query(first.url, "CREATE TABLE kept AS SELECT 1 AS n");
    await first.stop();
    const second = await startOwnPostgres({ folder });
    expect(await query(second.url, "SELECT n FROM kept")).toEqual([{ n: 1 }]);
    await second.stop();
    expect(existsSync(join(folder, "database", "data", "postmaster.pid"))).toBe(false);
  });

  it("says so when it is started twice on one folder, and leaves the first alone", async () => {
    const first = await startOwnPostgres({ folder });
    await expect(startOwnPostgres({ folder })).rejects.toThrow("Sizewright is already running with the data in");
    expect(await query(first.url, "SELECT 1 AS n")).toEqual([{ n: 1 }]);
    await first.stop();
  });

  it("takes over the server that a killed process left running", async () => {
    const { child, url } = await startElsewhere();
    const left = postmasterPid();
    await query(url, "CREATE TABLE kept AS SELECT 2 AS n");
    child.kill("SIGKILL");
    await once(child, "exit");
    expect(await query(url, "SELECT 1 AS n")).toEqual([{ n: 1 }]);
    const second = await startOwnPostgres({ folder });
    expect(await query(second.url, "SELECT n FROM kept")).toEqual([{ n: 2 }]);
    expect(postmasterPid()).not.toBe(left);
    await second.stop();
  });

  it("recovers when the server was killed as well, and its process id belongs to somebody else by now", async () => {
    const { child, url } = await startElsewhere();
    await query(url, "CREATE TABLE kept AS SELECT 3 AS n");
    const pidFile = join(folder, "database", "data", "postmaster.pid");
    const [pid, ...rest] = readFileSync(pidFile, "utf8").split("\n");
    child.kill("SIGKILL");
    process.kill(Number(pid), "SIGKILL");
    await once(child, "exit");
    writeFileSync(pidFile, [process.pid, ...rest].join("\n"));
    const second = await startOwnPostgres({ folder });
    expect(await query(second.url, "SELECT n FROM kept")).toEqual([{ n: 3 }]);
    await second.stop();
  });

  it("comes back at the same address when it is killed while it is in use", async () => {
    const { url, stop } = await startOwnPostgres({ folder });
    await query(url, "CREATE TABLE kept AS SELECT 4 AS n");
    process.kill(postmasterPid(), "SIGKILL");
    await vi.waitFor(async () => expect(await query(url, "SELECT n FROM kept")).toEqual([{ n: 4 }]), {
      timeout: 60_000,
      interval: 100,
    });
    await stop();
  });

  it("starts over when it was killed while it made its data", async () => {
    mkdirSync(join(folder, "database", "data.new", "base"), { recursive: true });
    const started = await startOwnPostgres({ folder });
    expect(await query(started.url, "SELECT 1 AS n")).toEqual([{ n: 1 }]);
    await started.stop();
  });

  it("starts in a folder with a space and an umlaut", async () => {
    const started = await startOwnPostgres({ folder: join(folder, "Größe neu") });
    expect(await query(started.url, "SELECT 1 AS n")).toEqual([{ n: 1 }]);
    await started.stop();
  });

  it("starts where an earlier start was cut short while it noted its port", async () => {
    writeFileSync(join(folder, "database-port"), "");
    const started = await startOwnPostgres({ folder });
    expect(await query(started.url, "SELECT 1 AS n")).toEqual([{ n: 1 }]);
    await started.stop();
  });

  it("starts once its folder can be written, after a first start that could not", async () => {
    const home = join(folder, "database");
    mkdirSync(home, { mode: 0o500 });
    await expect(startOwnPostgres({ folder })).rejects.toThrow();
    chmodSync(home, 0o700);
    const started = await startOwnPostgres({ folder });
    expect(await query(started.url, "SELECT 1 AS n")).toEqual([{ n: 1 }]);
    await started.stop();
  });

  it("tells what PostgreSQL said when it cannot start, and lets go of the folder", async () => {
    await (await startOwnPostgres({ folder })).stop();
    const version = join(folder, "database", "data", "PG_VERSION");
    writeFileSync(version, "9\n");
    await expect(startOwnPostgres({ folder })).rejects.toThrow(
      /PostgreSQL did not start with .*\n.*\n?.*initialized by PostgreSQL version 9/s,
    );
    writeFileSync(version, "18\n");
    await (await startOwnPostgres({ folder })).stop();
  });
});
