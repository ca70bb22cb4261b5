import { afterAll, beforeAll, inject } from "vitest";
import { database, pool } from "@/server/database";
import { copiedDatabase, type CopiedDatabase } from "./copied-database";

let own: CopiedDatabase;

/** Every test file gets a fresh database, and the server's modules find it where they look. */
beforeAll(async () => {
  own = await copiedDatabase(inject("templateUrl"), "template");
  Object.assign(process.env, {
    DATABASE_URL: own.url,
    NEXTAUTH_URL: "http://localhost:3000",
    NEXTAUTH_SECRET: "0123456789abcdef0123456789abcdef",
    LOG_LEVEL: "silent",
  });
});

afterAll(async () => {
  await database().$disconnect();
  await pool().end();
  await own.drop();
});
