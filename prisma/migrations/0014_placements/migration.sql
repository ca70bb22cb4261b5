-- What giving places answers is calculated whenever something that it rests on has changed, and stored: pages only read it.

-- A row for each write that a placing rests on; whoever calculates the placing takes out those that it has seen. It has no
-- key to the call, which would lock the call's row, so that nobody waits for anybody.
CREATE TABLE "placement_change" (
  "id" bigserial PRIMARY KEY,
  "call_id" uuid NOT NULL
);
CREATE INDEX "placement_change_call_id_idx" ON "placement_change" ("call_id");

CREATE TABLE "placement" (
  "call_id" uuid PRIMARY KEY REFERENCES "call" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "made_by" text NOT NULL,
  "valid_until" timestamptz(3),
  "board" jsonb
);
CREATE INDEX "placement_valid_until_idx" ON "placement" ("valid_until");

CREATE TABLE "placement_person" (
  "call_id" uuid NOT NULL REFERENCES "placement" ("call_id") ON DELETE CASCADE ON UPDATE CASCADE,
  "position" integer NOT NULL,
  "size" text,
  "application_id" uuid REFERENCES "application" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "tester_id" uuid REFERENCES "tester" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "answer" jsonb,
  PRIMARY KEY ("call_id", "position"),
  CHECK (num_nonnulls("application_id", "tester_id") = 1)
);
CREATE INDEX "placement_person_application_id_idx" ON "placement_person" ("application_id");
CREATE INDEX "placement_person_tester_id_idx" ON "placement_person" ("tester_id");

CREATE TRIGGER "placement_change_announces_work" AFTER INSERT ON "placement_change"
  FOR EACH STATEMENT EXECUTE FUNCTION announce_work();

-- The calls whose placing rests on the rows of a statement. A call that is being deleted is passed over.
CREATE FUNCTION note_placement_changes() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_TABLE_NAME = 'application_body' THEN
    INSERT INTO "placement_change" ("call_id") SELECT "id" FROM "call" WHERE "id" IN (
      SELECT "application"."call_id" FROM "changed" JOIN "application" ON "application"."id" = "changed"."application_id");
  ELSIF TG_TABLE_NAME = 'tester_body' THEN
    INSERT INTO "placement_change" ("call_id") SELECT "id" FROM "call" WHERE "id" IN (
      SELECT "tester"."call_id" FROM "changed" JOIN "tester" ON "tester"."id" = "changed"."tester_id");
  ELSIF TG_TABLE_NAME = 'revision' THEN
    INSERT INTO "placement_change" ("call_id") SELECT "id" FROM "call" WHERE "pattern_id" IN (
      SELECT "pattern_id" FROM "changed");
  ELSIF TG_TABLE_NAME = 'report' THEN
    -- Tests that somebody has finished count where they apply again.
    INSERT INTO "placement_change" ("call_id") SELECT DISTINCT "application"."call_id"
    FROM "changed" JOIN "tester" ON "tester"."id" = "changed"."tester_id"
    JOIN "application" ON "application"."account_id" = "tester"."account_id" AND "application"."call_id" <> "tester"."call_id";
  ELSE
    INSERT INTO "placement_change" ("call_id") SELECT "id" FROM "call" WHERE "id" IN (SELECT "call_id" FROM "changed");
  END IF;
  RETURN NULL;
END
$$;

-- The same of testers whose row says something else of a place; and of calls where they have applied too, for a test
-- that was left counts there.
CREATE FUNCTION note_tester_changes() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO "placement_change" ("call_id")
  SELECT "id" FROM "call" WHERE "id" IN (
    SELECT unnest(ARRAY["after"."call_id", "application"."call_id"])
    FROM "after" JOIN "before" USING ("id")
    LEFT JOIN "application" ON "application"."account_id" = "after"."account_id"
    WHERE ("before"."size", "before"."invited_at", "before"."invitation_ends_at", "before"."accepted_at",
           "before"."declined_at", "before"."withdrawn_at", "before"."stopped_at")
      IS DISTINCT FROM ("after"."size", "after"."invited_at", "after"."invitation_ends_at", "after"."accepted_at",
           "after"."declined_at", "after"."withdrawn_at", "after"."stopped_at"));
  RETURN NULL;
END
$$;

-- A call that is closed without a report of hers counts as one that she left.
CREATE FUNCTION note_call_status() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO "placement_change" ("call_id") SELECT DISTINCT "application"."call_id"
  FROM "tester" JOIN "application" ON "application"."account_id" = "tester"."account_id"
  WHERE "tester"."call_id" = NEW."id" AND "application"."call_id" <> NEW."id";
  RETURN NULL;
END
$$;

CREATE TRIGGER "application_changes_placement_1" AFTER INSERT ON "application"
  REFERENCING NEW TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "application_changes_placement_2" AFTER UPDATE ON "application"
  REFERENCING NEW TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "application_changes_placement_3" AFTER DELETE ON "application"
  REFERENCING OLD TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "application_body_changes_placement_1" AFTER INSERT ON "application_body"
  REFERENCING NEW TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "application_body_changes_placement_2" AFTER UPDATE ON "application_body"
  REFERENCING NEW TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "application_body_changes_placement_3" AFTER DELETE ON "application_body"
  REFERENCING OLD TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "tester_changes_placement_1" AFTER INSERT ON "tester"
  REFERENCING NEW TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "tester_changes_placement_2" AFTER UPDATE ON "tester"
  REFERENCING OLD TABLE AS "before" NEW TABLE AS "after" FOR EACH STATEMENT EXECUTE FUNCTION note_tester_changes();
CREATE TRIGGER "tester_changes_placement_3" AFTER DELETE ON "tester"
  REFERENCING OLD TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "tester_body_changes_placement_1" AFTER INSERT ON "tester_body"
  REFERENCING NEW TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "tester_body_changes_placement_2" AFTER UPDATE ON "tester_body"
  REFERENCING NEW TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "tester_body_changes_placement_3" AFTER DELETE ON "tester_body"
  REFERENCING OLD TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "place_changes_placement_1" AFTER INSERT ON "place"
  REFERENCING NEW TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "place_changes_placement_2" AFTER UPDATE ON "place"
  REFERENCING NEW TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "place_changes_placement_3" AFTER DELETE ON "place"
  REFERENCING OLD TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "opening_changes_placement_1" AFTER INSERT ON "opening"
  REFERENCING NEW TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "opening_changes_placement_2" AFTER UPDATE ON "opening"
  REFERENCING NEW TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "revision_changes_placement" AFTER INSERT ON "revision"
  REFERENCING NEW TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "report_changes_placement" AFTER INSERT ON "report"
  REFERENCING NEW TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_placement_changes();
CREATE TRIGGER "call_status_changes_placement" AFTER UPDATE OF "status" ON "call"
  FOR EACH ROW WHEN (OLD."status" IS DISTINCT FROM NEW."status") EXECUTE FUNCTION note_call_status();

INSERT INTO "placement_change" ("call_id") SELECT "id" FROM "call";

-- What lists of testers ask of every report and draft, so that none of them is read whole for it.
ALTER TABLE "report" ADD COLUMN "told" jsonb NOT NULL DEFAULT '[]';
ALTER TABLE "report_draft"
  ADD COLUMN "has_swatch" boolean NOT NULL DEFAULT false,
  ADD COLUMN "has_more" boolean NOT NULL DEFAULT false;

CREATE FUNCTION note_told() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  NEW."told" := jsonb_path_query_array(NEW."document", '$.readings[*].measurement') || coalesce(NEW."document" -> 'changed', '[]');
  RETURN NEW;
END
$$;

CREATE FUNCTION note_draft_parts() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  NEW."has_swatch" := jsonb_path_exists(NEW."typed", '$.keyvalue() ? (@.value != "" && @.key starts with "swatch.")');
  NEW."has_more" := jsonb_path_exists(NEW."typed", '$.keyvalue() ? (@.value != "" && !(@.key starts with "swatch."))');
  RETURN NEW;
END
$$;

CREATE TRIGGER "report_notes_told" BEFORE INSERT ON "report" FOR EACH ROW EXECUTE FUNCTION note_told();
CREATE TRIGGER "report_draft_notes_parts" BEFORE INSERT OR UPDATE OF "typed" ON "report_draft"
  FOR EACH ROW EXECUTE FUNCTION note_draft_parts();

ALTER TABLE "report" DISABLE TRIGGER "report_never_changes";
UPDATE "report" SET "told" = jsonb_path_query_array("document", '$.readings[*].measurement') || coalesce("document" -> 'changed', '[]');
ALTER TABLE "report" ENABLE TRIGGER "report_never_changes";
UPDATE "report_draft" SET "typed" = "typed";
