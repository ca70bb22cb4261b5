-- Who looked at a person's page, measurements or photos, once a day.
CREATE TYPE "view_kind" AS ENUM ('page', 'measurements', 'photos');

CREATE TABLE "data_view" (
  "id" uuid PRIMARY KEY DEFAULT gen_random_uuid(),
  "viewer_id" uuid REFERENCES "account" ("id") ON DELETE SET NULL ON UPDATE CASCADE,
  "tester_id" uuid REFERENCES "tester" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "application_id" uuid REFERENCES "application" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "kind" "view_kind" NOT NULL,
  "day" date NOT NULL,
  "seen_at" timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  CONSTRAINT "data_view_of_one" CHECK (num_nonnulls("tester_id", "application_id") = 1)
);
CREATE UNIQUE INDEX "data_view_viewer_id_tester_id_kind_day_key" ON "data_view" ("viewer_id", "tester_id", "kind", "day");
CREATE UNIQUE INDEX "data_view_viewer_id_application_id_kind_day_key"
  ON "data_view" ("viewer_id", "application_id", "kind", "day");
CREATE INDEX "data_view_tester_id_idx" ON "data_view" ("tester_id");
CREATE INDEX "data_view_application_id_idx" ON "data_view" ("application_id");
CREATE INDEX "data_view_day_idx" ON "data_view" ("day");

-- What a mailed link is for.
CREATE TYPE "email_link_purpose" AS ENUM ('sign_in', 'change_address', 'delete_account');
ALTER TABLE "email_link" ADD COLUMN "purpose" "email_link_purpose" NOT NULL DEFAULT 'sign_in';
ALTER TABLE "email_link" ADD CONSTRAINT "email_link_of_an_account"
  CHECK ("purpose" = 'sign_in' OR "account_id" IS NOT NULL);

-- When the designer was told what will be deleted, and when it was.
ALTER TABLE "call" ADD COLUMN "deletion_told_at" timestamptz(3);
ALTER TABLE "call" ADD COLUMN "people_deleted_at" timestamptz(3);

-- Whether the mail server takes mail; one row.
CREATE TABLE "mail_server" (
  "id" integer PRIMARY KEY DEFAULT 1,
  "checked_at" timestamptz(3) NOT NULL,
  "failing_since" timestamptz(3),
  "reply" text,
  CONSTRAINT "mail_server_is_one" CHECK ("id" = 1),
  CONSTRAINT "mail_server_fails_in_words" CHECK (("failing_since" IS NULL) = ("reply" IS NULL))
);

-- Links that somebody asked for are to their address, whatever test they are of: they go with any of them.
CREATE FUNCTION forget_own_links() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  DELETE FROM "message" WHERE "kind" = 'own-links' AND "address" IN (SELECT lower("email") FROM "gone");
  RETURN NULL;
END
$$;
CREATE TRIGGER "tester_contact_forgets_own_links" AFTER DELETE ON "tester_contact"
  REFERENCING OLD TABLE AS "gone" FOR EACH STATEMENT EXECUTE FUNCTION forget_own_links();
CREATE TRIGGER "application_contact_forgets_own_links" AFTER DELETE ON "application_contact"
  REFERENCING OLD TABLE AS "gone" FOR EACH STATEMENT EXECUTE FUNCTION forget_own_links();
