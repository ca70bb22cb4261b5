import { Client } from "pg";
import { afterEach, beforeEach, describe, expect, inject, it } from "vitest";
import {
  applyMigrations,
  MigrationError,
  pendingMigrations,
  readMigrations,
  type Migration,
} from "@/server/migrations";
import { copiedDatabase, type CopiedDatabase } from "./copied-database";

const ALL = readMigrations("prisma/migrations");
const NAMES = ALL.map(({ name }) => name);

let empty: CopiedDatabase;
let clients: Client[];

async function connected(): Promise<Client> {
  const client = new Client({ connectionString: empty.url });
  clients.push(client);
  await client.connect();
  return client;
}

function migration(name: string, sql: string): Migration {
  return { name, sql, checksum: `checksum of ${sql}` };
}

beforeEach(async () => {
  clients = [];
  empty = await copiedDatabase(inject("templateUrl"), "nothing");
});

afterEach(async () => {
  await Promise.all(clients.map((client) => client.end()));
  await empty.drop();
});

describe("migrations", () => {
  it("are applied in order, and the second time there is nothing to do", async () => {
    const client = await connected();
    expect(await pendingMigrations(client, ALL)).toEqual(ALL);
    expect(await applyMigrations(client, ALL)).toEqual(NAMES);
    expect(await applyMigrations(client, ALL)).toEqual([]);
    expect(await pendingMigrations(client, ALL)).toEqual([]);
  });

  it("are applied once when four start at the same time", async () => {
    const four = await Promise.all([connected(), connected(), connected(), connected()]);
    const applied = await Promise.all(four.map((client) => applyMigrations(client, ALL)));
    expect(applied.flat()).toEqual(NAMES);
  });

  it("are refused when an applied one was changed", async () => {
    const client = await connected();
    await applyMigrations(client, [migration("0001_a", "CREATE TABLE a ()")]);
    const changed = [migration("0001_a", "CREATE TABLE b ()")];
    await expect(applyMigrations(client, changed)).rejects.toThrow(
      "Migration 0001_a was changed after it had been applied.",
    );
  });

  it("are known by their text when their folder got another name, and recorded under it", async () => {
    const client = await connected();
    const [first, second] = [migration("0001_a", "CREATE TABLE a ()"), migration("0002_b", "CREATE TABLE b ()")];
    await applyMigrations(client, [first]);
    const renamed = [{ ...first, name: "0001_better" }, second];
    expect(await pendingMigrations(client, renamed)).toEqual([second]);
    expect(await applyMigrations(client, renamed)).toEqual(["0002_b"]);
    const { rows } = await client.query("SELECT name FROM applied_migration ORDER BY name");
    expect(rows).toEqual([{ name: "0001_better" }, { name: "0002_b" }]);
    const changed = [migration("0001_better", "CREATE TABLE c ()"), second];
    await expect(pendingMigrations(client, changed)).rejects.toThrow("0001_better was changed");
  });

  it("leave nothing behind when one fails half way", async () => {
    const client = await connected();
    const broken = [migration("0001_a", "CREATE TABLE a ()"), migration("0002_b", "CREATE TABLE b (); SELECT 1/0")];
    await expect(applyMigrations(client, broken)).rejects.toThrow(MigrationError);
    const { rows } = await client.query("SELECT to_regclass('a') AS a, to_regclass('b') AS b");
    expect(rows).toEqual([{ a: "a", b: null }]);
    expect(await pendingMigrations(client, broken)).toEqual([broken[1]]);
  });
});
