import { afterAll, beforeAll, expect, inject } from "vitest";
import { database, pool } from "@/server/database";
import { copiedDatabase, type CopiedDatabase } from "./copied-database";
import { watchedDatabase } from "./watched-database";

let own: CopiedDatabase;

/** `pg` warns once a process of a query on a connection that is still busy, and will refuse it one day. */
const warnings: string[] = [];
function keepWarning({ name, message }: Error): void {
  if (name === "DeprecationWarning" && message.includes("client.query()")) warnings.push(message);
}
process.on("warning", keepWarning);

// A file sets its own before its tests: what the file before it set is gone.
for (const name of [
  ...["SIZEWRIGHT_FOLDER", "SMTP_URL", "MAIL_FROM", "OPERATOR_EMAIL", "DKIM_KEY_FILE", "DKIM_SELECTOR", "PHOTOS_URL"],
])
  delete process.env[name];

/** Every test file gets a fresh database, and the server's modules find it where they look. */
beforeAll(async () => {
  own = await copiedDatabase(inject("templateUrl"), "template");
  Object.assign(process.env, {
    DATABASE_URL: own.url,
    NEXTAUTH_URL: "http://localhost:3000",
    NEXTAUTH_SECRET: "0123456789abcdef0123456789abcdef",
    LOG_LEVEL: "silent",
  });
  globalThis.sizewrightDatabase = watchedDatabase(database());
});

afterAll(async () => {
  await database().$disconnect();
  await pool().end();
  globalThis.sizewrightDatabase = undefined;
  globalThis.sizewrightPool = undefined;
  await own.drop();
  process.off("warning", keepWarning);
  expect(warnings).toEqual([]);
});
