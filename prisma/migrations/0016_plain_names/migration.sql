-- The words of the screens and of the field for tables, columns and types; nothing stored changes.
ALTER TABLE "opening" RENAME TO "listing";
ALTER TABLE "late_save" RENAME TO "conflicting_draft";

ALTER TYPE "application_word" RENAME TO "application_decision";
ALTER TYPE "application_hold" RENAME TO "application_pin";
ALTER TYPE "milestone_word" RENAME TO "progress_status";

ALTER TABLE "account" RENAME COLUMN "email_proved_at" TO "email_verified_at";
ALTER TABLE "application" RENAME COLUMN "word" TO "decision";
ALTER TABLE "application" RENAME COLUMN "hold" TO "pin";
ALTER TABLE "invitation" RENAME COLUMN "ends_at" TO "expires_at";
ALTER TABLE "milestone" RENAME COLUMN "word" TO "status";
ALTER TABLE "pattern" RENAME COLUMN "invented" TO "is_demo";
ALTER TABLE "report" RENAME COLUMN "told" TO "answered_measurements";
ALTER TABLE "revision_evidence" RENAME COLUMN "misworked" TO "instruction_errors";
ALTER TABLE "tester" RENAME COLUMN "invitation_ends_at" TO "invitation_expires_at";
ALTER TABLE "tester" RENAME COLUMN "told" TO "answered_measurements";
ALTER TABLE "tester" RENAME COLUMN "word" TO "status";
ALTER TABLE "tester" RENAME COLUMN "word_at" TO "status_at";

-- A plan as the engine wrote it.
ALTER TABLE "plan" DISABLE TRIGGER "plan_never_changes";
UPDATE "plan" SET "output" = replace("output", '"misworked":', '"instructionErrors":') WHERE "output" LIKE '%"misworked":%';
ALTER TABLE "plan" ENABLE TRIGGER "plan_never_changes";

-- One key of a sending in every table that has one.
DO $$
DECLARE "found" record;
BEGIN
  FOR "found" IN SELECT "table_name" FROM information_schema.columns
    WHERE "table_schema" = current_schema AND "column_name" = 'submission_key' LOOP
    EXECUTE format('ALTER TABLE %I RENAME COLUMN "submission_key" TO "idempotency_key"', "found"."table_name");
  END LOOP;
END
$$;

-- Keys, checks, indexes and triggers bear the names of their tables and columns.
CREATE FUNCTION plain_name("name" text) RETURNS text LANGUAGE sql AS $$
  SELECT replace(replace(replace(replace(replace(replace("name",
    'opening', 'listing'), 'late_save', 'conflicting_draft'), 'submission_key', 'idempotency_key'),
    'email_proved', 'email_verified'), 'notes_told', 'notes_answers'), 'invitation_ends', 'invitation_expires')
$$;
DO $$
DECLARE "found" record;
BEGIN
  FOR "found" IN SELECT "conrelid"::regclass AS "table", "conname" AS "name" FROM pg_constraint
    WHERE "connamespace" = current_schema::regnamespace AND "conrelid" <> 0
      AND "conparentid" = 0 AND "contype" <> 't' AND plain_name("conname") <> "conname" LOOP
    EXECUTE format('ALTER TABLE %s RENAME CONSTRAINT %I TO %I', "found"."table", "found"."name", plain_name("found"."name"));
  END LOOP;
  FOR "found" IN SELECT "relname" AS "name" FROM pg_class
    WHERE "relnamespace" = current_schema::regnamespace AND "relkind" = 'i' AND plain_name("relname") <> "relname" LOOP
    EXECUTE format('ALTER INDEX %I RENAME TO %I', "found"."name", plain_name("found"."name"));
  END LOOP;
  FOR "found" IN SELECT "tgrelid"::regclass AS "table", "tgname" AS "name" FROM pg_trigger
    JOIN pg_class ON pg_class."oid" = "tgrelid"
    WHERE "relnamespace" = current_schema::regnamespace AND NOT "tgisinternal" AND plain_name("tgname") <> "tgname" LOOP
    EXECUTE format('ALTER TRIGGER %I ON %s RENAME TO %I', "found"."name", "found"."table", plain_name("found"."name"));
  END LOOP;
END
$$;
DROP FUNCTION plain_name(text);

-- Functions read columns by their names when they run.
ALTER FUNCTION note_told() RENAME TO note_answers;
CREATE OR REPLACE FUNCTION note_answers() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  NEW."answered_measurements" :=
    jsonb_path_query_array(NEW."document", '$.readings[*].measurement') || coalesce(NEW."document" -> 'changed', '[]');
  RETURN NEW;
END
$$;

CREATE OR REPLACE FUNCTION note_newest_report() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  UPDATE "tester" SET ("reported_at", "answered_measurements") = (
    SELECT "created_at", "answered_measurements" FROM "report" WHERE "tester_id" = "tester"."id"
    ORDER BY "version" DESC LIMIT 1)
  WHERE "id" IN (SELECT "tester_id" FROM "changed");
  RETURN NULL;
END
$$;

CREATE OR REPLACE FUNCTION note_newest_milestone() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  UPDATE "tester" SET ("status", "status_at") = (
    SELECT "status", "created_at" FROM "milestone" WHERE "tester_id" = "tester"."id"
    ORDER BY "created_at" DESC, "id" DESC LIMIT 1)
  WHERE "id" IN (SELECT "tester_id" FROM "changed");
  RETURN NULL;
END
$$;

CREATE OR REPLACE FUNCTION note_tester_changes() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO "placement_change" ("call_id")
  SELECT "id" FROM "call" WHERE "id" IN (
    SELECT unnest(ARRAY["after"."call_id", "application"."call_id"])
    FROM "after" JOIN "before" USING ("id")
    LEFT JOIN "application" ON "application"."account_id" = "after"."account_id"
    WHERE ("before"."size", "before"."invited_at", "before"."invitation_expires_at", "before"."accepted_at",
           "before"."declined_at", "before"."withdrawn_at", "before"."stopped_at")
      IS DISTINCT FROM ("after"."size", "after"."invited_at", "after"."invitation_expires_at", "after"."accepted_at",
           "after"."declined_at", "after"."withdrawn_at", "after"."stopped_at"));
  RETURN NULL;
END
$$;
