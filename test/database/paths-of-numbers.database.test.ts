import { randomUUID } from "node:crypto";
import { Client } from "pg";
import { afterEach, beforeEach, expect, inject, it } from "vitest";
import { patternDraftSchema } from "@/engine/editing";
import { planRequestSchema, readPlanOutput } from "../../src/features/results/changes/plan-schema";
import { applyMigrations, readMigrations } from "@/server/migrations";
import { patternDocument, widthTyped } from "../factories/pattern";
import { copiedDatabase, type CopiedDatabase } from "./copied-database";

const ALL = readMigrations("prisma/migrations");
const LAST = "0022_paths_of_numbers";

const [bust, length] = patternDocument().measurements;
if (bust === undefined || length === undefined) throw new Error("the factory has two measurements");
const pattern = patternDocument({
  measurements: [bust, { ...length, target: { cm: { small: 50, large: 55 } } }],
});

const OLD = {
  "grading.width.small": 980,
  "allowances.edging.all": 30,
  "lengths.hem.small": 200,
  "targets.bust.all": 70,
  "targets.length.large": 300,
};
const NEW = {
  "grading.width.small": 980,
  "allowances.edging.cm": 30,
  "lengths.hem.cm.small": 200,
  "measurements.bust.target.easeCm": 70,
  "measurements.length.target.cm.large": 300,
};

let copy: CopiedDatabase;
let client: Client;
const id = randomUUID();

beforeEach(async () => {
  copy = await copiedDatabase(inject("templateUrl"), "nothing");
  client = new Client({ connectionString: copy.url });
  await client.connect();
  await applyMigrations(
    client,
    ALL.filter(({ name }) => name < LAST),
  );
  // Rows alone, without those that they belong to.
  await client.query("SET session_replication_role = replica");
  await client.query("INSERT INTO revision (id, pattern_id, number, document, reason) VALUES ($1, $1, 1, $2, '')", [
    id,
    pattern,
  ]);
});

afterEach(async () => {
  await client.end();
  await copy.drop();
});

async function migrate(): Promise<void> {
  await client.query("SET session_replication_role = origin");
  expect(await applyMigrations(client, ALL)).toContain(LAST);
}

it("keeps what a draft confirms, under the paths of the document", async () => {
  const draft = { ...widthTyped("980"), pattern, meant: OLD };
  await client.query("INSERT INTO draft (pattern_id, base_id, typed) VALUES ($1, $1, $2)", [id, draft]);
  await client.query("INSERT INTO draft (pattern_id, base_id, typed) VALUES ($1, $2, '{}')", [randomUUID(), id]);
  await client.query("INSERT INTO conflicting_draft (pattern_id, account_id, typed) VALUES ($1, $1, $2)", [id, draft]);
  await migrate();
  for (const table of ["draft", "conflicting_draft"]) {
    const { rows } = await client.query<{ typed: unknown }>(`SELECT typed FROM ${table} WHERE pattern_id = $1`, [id]);
    expect(patternDraftSchema.parse(rows[0]?.typed)).toEqual({ ...draft, meant: NEW });
  }
});

it("keeps what a plan corrects and what was wrong with it, and the plan unchangeable", async () => {
  const typed = Object.fromEntries(Object.entries(OLD).map(([path, number]) => [path, String(number)]));
  const request = { kind: "correction", size: "small", measurement: "bust", typed, unit: "cm", reason: "" };
  const faults = Object.keys(OLD).map((path) => ({ path, says: "“x” is not a number." }));
  await client.query("INSERT INTO call (id, pattern_id, title) VALUES ($1, $1, '')", [id]);
  await client.query(
    `INSERT INTO plan (id, call_id, request, base_number, call_version, engine_version, differences, output, idempotency_key)
     VALUES ($1, $1, $2, 1, 1, '1', '{}', $3, $1)`,
    [id, request, JSON.stringify({ status: "faults", faults })],
  );
  await migrate();
  const { rows } = await client.query<{ request: unknown; output: string }>("SELECT request, output FROM plan");
  const asked = planRequestSchema.parse(rows[0]?.request);
  expect(asked.kind === "correction" && Object.keys(asked.typed).toSorted()).toEqual(Object.keys(NEW).toSorted());
  const output = readPlanOutput(rows[0]?.output ?? "");
  expect(output.status === "faults" && output.faults.map(({ path }) => path)).toEqual(Object.keys(NEW));
  await expect(client.query("UPDATE plan SET request = '{}'")).rejects.toThrow();
});
