import { execFileSync } from "node:child_process";
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Client } from "pg";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { copiedDatabase } from "./copied-database";

const SCHEMA = "prisma/schema";

/** Columns, keys, indexes and kinds. What a Prisma schema cannot say (checks, triggers, partial
 * indexes, when a key is checked) is left out. */
const CATALOGUE = `
  SELECT 'column ' || c.relname || '.' || a.attname || ' ' || format_type(a.atttypid, a.atttypmod)
         || CASE WHEN a.attnotnull THEN ' not null' ELSE '' END || coalesce(' default ' || pg_get_expr(d.adbin, d.adrelid), '') AS says
    FROM pg_attribute a JOIN pg_class c ON c.oid = a.attrelid LEFT JOIN pg_attrdef d ON d.adrelid = c.oid AND d.adnum = a.attnum
   WHERE c.relkind = 'r' AND c.relnamespace = 'public'::regnamespace AND a.attnum > 0 AND NOT a.attisdropped
  UNION ALL
  SELECT 'key ' || conrelid::regclass || ' ' || conname || ' ' || replace(pg_get_constraintdef(oid), ' DEFERRABLE INITIALLY DEFERRED', '')
    FROM pg_constraint WHERE contype IN ('p', 'u', 'f') AND connamespace = 'public'::regnamespace
  UNION ALL
  SELECT 'index ' || pg_get_indexdef(indexrelid) FROM pg_index JOIN pg_class c ON c.oid = indrelid
   WHERE c.relnamespace = 'public'::regnamespace AND indpred IS NULL
  UNION ALL
  SELECT 'kind ' || typname || ' ' || string_agg(enumlabel, ', ' ORDER BY enumsortorder)
    FROM pg_enum JOIN pg_type t ON t.oid = enumtypid AND t.typnamespace = 'public'::regnamespace GROUP BY typname
  ORDER BY 1`;

async function catalogue(url: string, prepare = ""): Promise<string[]> {
  const client = new Client({ connectionString: url });
  await client.connect();
  try {
    await client.query(prepare);
    const { rows } = await client.query<{ says: string }>(CATALOGUE);
    return rows.map(({ says }) => says).filter((says) => !says.includes("applied_migration"));
  } finally {
    await client.end();
  }
}

/** The catalogue of a database made from a folder of Prisma schema files alone. */
async function catalogueOfSchema(schemaFolder: string): Promise<string[]> {
  const flags = ["--experimental-wasm-modules", "--no-warnings", "--import", "tsx"];
  const sql = execFileSync(process.execPath, [...flags, "test/database/print-schema-sql.ts", schemaFolder]).toString();
  const empty = await copiedDatabase(inject("templateUrl"), "nothing");
  try {
    return await catalogue(empty.url, sql);
  } finally {
    await empty.drop();
  }
}

describe("the Prisma schema and the migrations", () => {
  const folder = mkdtempSync(join(tmpdir(), "sizewright-schema-"));
  let migrated: string[];

  beforeAll(async () => {
    migrated = await catalogue(inject("templateUrl"));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it("make the same database", async () => {
    expect(migrated.length).toBeGreaterThan(50);
    expect(await catalogueOfSchema(SCHEMA)).toEqual(migrated);
  });

  it.each([
    [
      "a new column",
      '  isDemo        Boolean  @default(false) @map("is_demo")',
      '  isDemo        Boolean  @default(false) @map("is_demo")\n  maker String?',
    ],
    ["another default", "@default(cm)", "@default(in)"],
    ["a new index", '@@map("pattern")', '@@index([createdAt])\n  @@map("pattern")'],
    ["another rule of deletion", "onDelete: SetNull", "onDelete: Cascade"],
    ["a new kind", "  viewer\n", "  viewer\n  reader\n"],
  ])("are found out of step by %s", async (_what, from, to) => {
    cpSync(SCHEMA, folder, { recursive: true });
    const files = readdirSync(folder).map((name) => join(folder, name));
    const changed = files.find((path) => readFileSync(path, "utf8").includes(from));
    if (changed === undefined) throw new Error(`no schema file holds ${from}`);
    writeFileSync(changed, readFileSync(changed, "utf8").replace(from, to));
    expect(await catalogueOfSchema(folder)).not.toEqual(migrated);
  });
});
