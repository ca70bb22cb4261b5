import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, it } from "vitest";
import { database } from "@/server/database";
import { playForget } from "../drill/forget";
import { faultsOf } from "../drill/searched";

// Before the settings are first read.
const folder = mkdtempSync(join(tmpdir(), "sizewright-forget-"));
process.env.SIZEWRIGHT_FOLDER = folder;
process.env.SMTP_URL = "smtp://127.0.0.1:1";
process.env.MAIL_FROM = "Sizewright <mail@sizes.example>";
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it("leaves nothing in any table of a tester who deleted their data, and of one who deleted their account", async () => {
  const searched = await playForget({ marker: "mark7of9er", waitMs: 0 });
  expect(faultsOf(searched)).toEqual([]);
});

it("prints nothing of what people wrote where the database refuses a row", async () => {
  const refused = database().message.create({ data: { kind: "k", messageId: "<m>", address: "Marked@example.org" } });
  const error: unknown = await refused.catch((reason: unknown) => reason);
  expect(JSON.stringify(error, Object.getOwnPropertyNames(error))).toContain("message_");
  const { inspect } = await import("node:util");
  expect(inspect(error, { depth: 10 })).not.toContain("Marked@");
});
