import { Client } from "pg";

export interface CopiedDatabase {
  readonly url: string;
  drop(): Promise<void>;
}

let made = 0;

/** A database of this worker's own: a copy of the template with every migration, or an empty one. */
export async function copiedDatabase(templateUrl: string, of: "template" | "nothing"): Promise<CopiedDatabase> {
  made += 1;
  const name = `test_${process.pid}_${process.env.VITEST_POOL_ID}_${made}`;
  const template = of === "template" ? "sizewright" : "template0";
  await onServer(templateUrl, `CREATE DATABASE ${name} TEMPLATE ${template}`);
  return {
    url: at(templateUrl, name),
    drop: () => onServer(templateUrl, `DROP DATABASE ${name} WITH (FORCE)`),
  };
}

async function onServer(templateUrl: string, statement: string): Promise<void> {
  const client = new Client({ connectionString: at(templateUrl, "postgres") });
  await client.connect();
  try {
    await client.query(statement);
  } finally {
    await client.end();
  }
}

function at(templateUrl: string, database: string): string {
  const url = new URL(templateUrl);
  url.pathname = `/${database}`;
  return url.href;
}
