import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { PrismaPg } from "@prisma/adapter-pg";
import { bindMigrationAwareSqlAdapterFactory } from "@prisma/driver-adapter-utils";
import { SchemaEngine } from "@prisma/schema-engine-wasm";

// Prints the SQL that makes the tables of a folder of Prisma schema files. A process of its own, for the engine is a module of
// WebAssembly, which Node imports only with --experimental-wasm-modules. It wants a database that answers, and uses none.
const [folder = "prisma/schema"] = process.argv.slice(2);
const files = readdirSync(folder).map((name) => join(folder, name));
const adapter = bindMigrationAwareSqlAdapterFactory(new PrismaPg({ connectionString: process.env.DATABASE_URL }));
const engine = await SchemaEngine.new({ datamodels: undefined }, () => undefined, adapter);
const { stdout } = await engine.diff({
  from: { tag: "empty" },
  to: { tag: "schemaDatamodel", files: files.map((path) => ({ path, content: readFileSync(path, "utf8") })) },
  script: true,
  exitCode: null,
  filters: { externalTables: [], externalEnums: [] },
});
console.log(stdout);
process.exit();
