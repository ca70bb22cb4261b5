import type { Pool } from "pg";
import { z } from "zod";

export interface DumpedRows {
  /** Statements that put every row of every table back, in an order in which what a row refers to comes before it. */
  readonly sql: string;
  /** Rows by table. */
  readonly counts: Readonly<Record<string, number>>;
}

const tableSchema = z.array(z.object({ name: z.string(), columns: z.array(z.string()), refers: z.array(z.string()) }));

/** Tables of the app's own schema with their columns, and the other tables that they refer to. */
const TABLES = `
  SELECT c.relname AS name,
         (SELECT json_agg(attname ORDER BY attnum) FROM pg_attribute
           WHERE attrelid = c.oid AND attnum > 0 AND NOT attisdropped) AS columns,
         (SELECT coalesce(json_agg(DISTINCT r.relname), '[]') FROM pg_constraint k JOIN pg_class r ON r.oid = k.confrelid
           WHERE k.conrelid = c.oid AND k.contype = 'f' AND r.oid <> c.oid) AS refers
    FROM pg_class c
   WHERE c.relkind = 'r' AND c.relnamespace = 'public'::regnamespace AND c.relname <> 'applied_migration'
   ORDER BY c.relname`;

/** All rows as plain SQL, for the PostgreSQL that Sizewright brings along has no tool that dumps. */
export async function dumpRows(client: Pick<Pool, "query">): Promise<DumpedRows> {
  const { rows: tables } = await client.query(TABLES);
  const counts: Record<string, number> = {};
  const statements: string[] = [];
  for (const { name, columns } of referredFirst(tableSchema.parse(tables))) {
    const quoted = columns.map((column) => `"${column}"`);
    const values = quoted.map((column) => `quote_nullable(${column}::text)`).join(" || ', ' || ");
    const { rows } = await client.query(`SELECT ${values} AS "values" FROM "${name}" ORDER BY 1`);
    const lines = z.array(z.object({ values: z.string() })).parse(rows);
    counts[name] = lines.length;
    for (const line of lines) statements.push(`INSERT INTO "${name}" (${quoted.join(", ")}) VALUES (${line.values});`);
  }
  return { sql: `${statements.join("\n")}\n`, counts };
}

function referredFirst(tables: z.infer<typeof tableSchema>): z.infer<typeof tableSchema> {
  const done = new Set<string>();
  const ordered: z.infer<typeof tableSchema> = [];
  while (ordered.length < tables.length) {
    const next = tables.find(({ name, refers }) => !done.has(name) && refers.every((other) => done.has(other)));
    if (next === undefined) throw new Error("tables refer to each other in a circle");
    done.add(next.name);
    ordered.push(next);
  }
  return ordered;
}
