import { randomUUID } from "node:crypto";
import { beforeAll, describe, expect, it } from "vitest";
import { pool } from "@/server/database";
import { makeAccount } from "./make-account";

const ids = {
  pattern: randomUUID(),
  revision: randomUUID(),
  call: randomUUID(),
  tester: randomUUID(),
  report: randomUUID(),
};
let accountId: string;

/** @returns the constraint or the sentence with which PostgreSQL refuses a statement, null where it does not. */
async function refusal(statement: string, values: unknown[]): Promise<string | null> {
  try {
    await pool().query(statement, values);
    return null;
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    return "constraint" in error && typeof error.constraint === "string" ? error.constraint : error.message;
  }
}

beforeAll(async () => {
  accountId = (await makeAccount()).id;
  await pool().query("INSERT INTO pattern (id) VALUES ($1)", [ids.pattern]);
  await pool().query(
    "INSERT INTO revision (id, pattern_id, number, document, reason, created_by_id) VALUES ($1, $2, 1, '{}', 'first', $3)",
    [ids.revision, ids.pattern, accountId],
  );
  await pool().query("INSERT INTO call (id, pattern_id, title) VALUES ($1, $2, 'A call')", [ids.call, ids.pattern]);
  await pool().query("INSERT INTO tester (id, call_id, code, position, size) VALUES ($1, $2, 't1', 0, 'm')", [
    ids.tester,
    ids.call,
  ]);
  await pool().query(
    "INSERT INTO report (id, tester_id, version, revision_id, document, idempotency_key) VALUES ($1, $2, 1, $3, '{}', $4)",
    [ids.report, ids.tester, ids.revision, randomUUID()],
  );
});

describe("what is saved for good", () => {
  it.each([
    ["number", "2"],
    ["document", `'{"changed": true}'`],
    ["reason", "'another'"],
    ["created_at", "now()"],
    ["created_by_id", "created_by_id"],
    ["pattern_id", "gen_random_uuid()"],
  ])("refuses a change of a revision's %s", async (column, value) => {
    const said = await refusal(`UPDATE revision SET ${column} = ${value} WHERE id = $1`, [ids.revision]);
    expect(said).toBe("a saved revision never changes: write the next one");
  });

  it.each(["version = 2", `document = '{"changed": true}'`, `typed = '{"a": "1"}'`])(
    "refuses a change of a report: %s",
    async (change) => {
      const said = await refusal(`UPDATE report SET ${change} WHERE id = $1`, [ids.report]);
      expect(said).toBe("a saved report never changes: write the next one");
    },
  );

  it("loses only its author's name when the account goes", async () => {
    const leaving = await makeAccount();
    await pool().query(
      "INSERT INTO revision (pattern_id, number, document, reason, created_by_id) VALUES ($1, 7, '{}', 'theirs', $2)",
      [ids.pattern, leaving.id],
    );
    await pool().query("DELETE FROM account WHERE id = $1", [leaving.id]);
    const { rows } = await pool().query("SELECT reason, created_by_id FROM revision WHERE number = 7");
    expect(rows).toEqual([{ reason: "theirs", created_by_id: null }]);
  });
});

describe("rows that make no sense are refused", () => {
  it.each([
    [
      "account_email_small_letters",
      "INSERT INTO account (email, name, password_hash) VALUES ('Ann@example.org', 'a', 'h')",
    ],
    ["account_email_small_letters", "INSERT INTO account (email, name, password_hash) VALUES ('', 'a', 'h')"],
    ['invalid input value for enum length_unit: "ell"', "UPDATE account SET unit = 'ell'"],
    ["account_session_version_positive", "UPDATE account SET session_version = 0"],
    [
      "revision_number_positive",
      "INSERT INTO revision (pattern_id, number, document, reason) SELECT id, 0, '{}', '' FROM pattern",
    ],
    [
      "revision_document_object",
      "INSERT INTO revision (pattern_id, number, document, reason) SELECT id, 9, '[]', '' FROM pattern",
    ],
    [
      "place_least_within_wanted",
      "INSERT INTO place (call_id, size, least, wanted, most) SELECT id, 'M', 3, 2, 4 FROM call",
    ],
    [
      "place_wanted_within_most",
      "INSERT INTO place (call_id, size, least, wanted, most) SELECT id, 'M', 1, 3, 2 FROM call",
    ],
    ["tester_position_not_negative", "UPDATE tester SET position = -1"],
    ['invalid input value for enum stitch_terms: "de"', "UPDATE tester SET terms = 'de'"],
    [
      'invalid input value for enum item_decision: "perhaps"',
      "INSERT INTO decision SELECT id, 'readings', 0, 'perhaps' FROM report",
    ],
    ["decision_position_not_negative", "INSERT INTO decision SELECT id, 'readings', -1, 'keep' FROM report"],
    [
      "revision_pattern_id_fkey",
      "INSERT INTO revision (pattern_id, number, document, reason) VALUES (gen_random_uuid(), 1, '{}', '')",
    ],
    ["report_revision_id_fkey", "DELETE FROM revision WHERE id IN (SELECT revision_id FROM report)"],
    [
      "tester_call_id_fkey",
      "INSERT INTO tester (call_id, code, position, size) VALUES (gen_random_uuid(), 'x', 5, 'm')",
    ],
    [
      "report_tester_id_version_key",
      "INSERT INTO report (tester_id, version, revision_id, document, idempotency_key) SELECT tester_id, version, revision_id, document, gen_random_uuid() FROM report",
    ],
  ])("%s", async (constraint, statement) => {
    expect(await refusal(statement, [])).toBe(constraint);
  });

  it("a pattern has one owner", async () => {
    const second = await makeAccount();
    const insert = "INSERT INTO membership (pattern_id, account_id, role) VALUES ($1, $2, 'owner')";
    expect(await refusal(insert, [ids.pattern, accountId])).toBeNull();
    expect(await refusal(insert, [ids.pattern, second.id])).toBe("membership_one_owner");
  });
});
