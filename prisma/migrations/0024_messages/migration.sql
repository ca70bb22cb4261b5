-- The outbox: a message is written in the transaction that causes it, and sent by the worker.

CREATE TABLE "message" (
  "id" uuid PRIMARY KEY DEFAULT gen_random_uuid(),
  "kind" text NOT NULL,
  "message_id" text NOT NULL,
  "address" text NOT NULL,
  "content" jsonb,
  "call_id" uuid REFERENCES "call" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "application_id" uuid REFERENCES "application" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "tester_id" uuid REFERENCES "tester" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "account_id" uuid REFERENCES "account" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "created_at" timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  "due_at" timestamptz(3) DEFAULT CURRENT_TIMESTAMP,
  "attempts" integer NOT NULL DEFAULT 0,
  "sent_at" timestamptz(3),
  "failed_at" timestamptz(3),
  "reply" text,
  CONSTRAINT "message_address_small" CHECK ("address" = lower("address")),
  -- It waits, it is sent, or it is given up.
  CONSTRAINT "message_one_state" CHECK (num_nonnulls("due_at", "sent_at", "failed_at") = 1),
  -- What is sent can be sent no more without its content.
  CONSTRAINT "message_waits_whole" CHECK ("due_at" IS NULL OR "content" IS NOT NULL)
);
CREATE UNIQUE INDEX "message_message_id_key" ON "message" ("message_id");
CREATE INDEX "message_due_at_idx" ON "message" ("due_at");
CREATE INDEX "message_call_id_idx" ON "message" ("call_id");
CREATE INDEX "message_application_id_idx" ON "message" ("application_id");
CREATE INDEX "message_tester_id_idx" ON "message" ("tester_id");
CREATE INDEX "message_account_id_idx" ON "message" ("account_id");

CREATE TRIGGER "message_announces_work" AFTER INSERT ON "message"
  FOR EACH STATEMENT EXECUTE FUNCTION announce_work();

CREATE TABLE "refused_address" (
  "address" text PRIMARY KEY,
  "refused_at" timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  "reply" text NOT NULL
);

-- An address is nobody's any more once its last person is deleted, and then nothing of it stays.
CREATE FUNCTION forget_refused_addresses() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  DELETE FROM "refused_address" WHERE "address" IN (SELECT lower("email") FROM "gone")
    AND NOT EXISTS (SELECT FROM "account" WHERE "account"."email" = "refused_address"."address")
    AND NOT EXISTS (SELECT FROM "tester_contact" WHERE lower("tester_contact"."email") = "refused_address"."address")
    AND NOT EXISTS (SELECT FROM "application_contact" WHERE "application_contact"."email" = "refused_address"."address");
  RETURN NULL;
END
$$;

CREATE TRIGGER "account_forgets_refused_address" AFTER DELETE ON "account"
  REFERENCING OLD TABLE AS "gone" FOR EACH STATEMENT EXECUTE FUNCTION forget_refused_addresses();
CREATE TRIGGER "tester_contact_forgets_refused_address" AFTER DELETE ON "tester_contact"
  REFERENCING OLD TABLE AS "gone" FOR EACH STATEMENT EXECUTE FUNCTION forget_refused_addresses();
CREATE TRIGGER "application_contact_forgets_refused_address" AFTER DELETE ON "application_contact"
  REFERENCING OLD TABLE AS "gone" FOR EACH STATEMENT EXECUTE FUNCTION forget_refused_addresses();
