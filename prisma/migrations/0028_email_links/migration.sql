-- Links that are mailed to an address: they sign its account in, or let its first account be created. Once, for an hour.
CREATE TABLE "email_link" (
  "id" uuid PRIMARY KEY DEFAULT gen_random_uuid(),
  "address" text NOT NULL,
  "account_id" uuid REFERENCES "account" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "session_version" integer,
  "created_at" timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  "expires_at" timestamptz(3) NOT NULL,
  "used_at" timestamptz(3),
  "replaced_at" timestamptz(3),
  CONSTRAINT "email_link_address_small" CHECK ("address" = lower("address")),
  CONSTRAINT "email_link_of_a_version" CHECK (("account_id" IS NULL) = ("session_version" IS NULL)),
  CONSTRAINT "email_link_one_end" CHECK ("used_at" IS NULL OR "replaced_at" IS NULL)
);
CREATE INDEX "email_link_address_idx" ON "email_link" ("address");
CREATE INDEX "email_link_account_id_idx" ON "email_link" ("account_id");

ALTER TABLE "message" ADD COLUMN "email_link_id" uuid REFERENCES "email_link" ("id") ON DELETE CASCADE ON UPDATE CASCADE;
CREATE INDEX "message_email_link_id_idx" ON "message" ("email_link_id");

-- An address that refused mail is forgotten with the last link to it, where nobody has it.
CREATE FUNCTION forget_refused_link_addresses() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  DELETE FROM "refused_address" WHERE "address" IN (SELECT "address" FROM "gone")
    AND NOT EXISTS (SELECT FROM "email_link" WHERE "email_link"."address" = "refused_address"."address")
    AND NOT EXISTS (SELECT FROM "account" WHERE "account"."email" = "refused_address"."address")
    AND NOT EXISTS (SELECT FROM "tester_contact" WHERE lower("tester_contact"."email") = "refused_address"."address")
    AND NOT EXISTS (SELECT FROM "application_contact" WHERE "application_contact"."email" = "refused_address"."address");
  RETURN NULL;
END
$$;
CREATE TRIGGER "email_link_forgets_refused_address" AFTER DELETE ON "email_link"
  REFERENCING OLD TABLE AS "gone" FOR EACH STATEMENT EXECUTE FUNCTION forget_refused_link_addresses();
