import { expect, it } from "vitest";
import { database, pool } from "@/server/database";
import { makeAccount } from "./make-account";

it("means by a moment what the database means, though the server keeps another zone", async () => {
  const { id, createdAt } = await makeAccount();
  const ours = await pool().query("SELECT created_at FROM account WHERE id = $1", [id]);
  expect(ours.rows).toEqual([{ created_at: createdAt }]);
  await pool().query("UPDATE account SET created_at = '2026-03-01T12:00:00Z' WHERE id = $1", [id]);
  const read = await database().account.findUniqueOrThrow({ where: { id } });
  expect(read.createdAt).toEqual(new Date("2026-03-01T12:00:00Z"));
});
