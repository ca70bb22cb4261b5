-- What the list of a call's testers asks of everybody's newest report and newest word, stored with the tester: for all of
-- them it is counted from one table, and nobody's reports and words are looked up.
ALTER TABLE "tester"
  ADD COLUMN "reported_at" timestamptz(3),
  ADD COLUMN "told" jsonb,
  ADD COLUMN "word" "milestone_word",
  ADD COLUMN "word_at" timestamptz(3);

CREATE FUNCTION note_newest_report() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  UPDATE "tester" SET ("reported_at", "told") = (
    SELECT "created_at", "told" FROM "report" WHERE "tester_id" = "tester"."id" ORDER BY "version" DESC LIMIT 1)
  WHERE "id" IN (SELECT "tester_id" FROM "changed");
  RETURN NULL;
END
$$;

CREATE FUNCTION note_newest_milestone() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  UPDATE "tester" SET ("word", "word_at") = (
    SELECT "word", "created_at" FROM "milestone" WHERE "tester_id" = "tester"."id" ORDER BY "created_at" DESC, "id" DESC LIMIT 1)
  WHERE "id" IN (SELECT "tester_id" FROM "changed");
  RETURN NULL;
END
$$;

CREATE TRIGGER "report_notes_newest_1" AFTER INSERT ON "report"
  REFERENCING NEW TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_newest_report();
CREATE TRIGGER "report_notes_newest_2" AFTER DELETE ON "report"
  REFERENCING OLD TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_newest_report();
CREATE TRIGGER "milestone_notes_newest_1" AFTER INSERT ON "milestone"
  REFERENCING NEW TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_newest_milestone();
CREATE TRIGGER "milestone_notes_newest_2" AFTER DELETE ON "milestone"
  REFERENCING OLD TABLE AS "changed" FOR EACH STATEMENT EXECUTE FUNCTION note_newest_milestone();

UPDATE "tester" SET
  ("reported_at", "told") = (
    SELECT "created_at", "told" FROM "report" WHERE "tester_id" = "tester"."id" ORDER BY "version" DESC LIMIT 1),
  ("word", "word_at") = (
    SELECT "word", "created_at" FROM "milestone" WHERE "tester_id" = "tester"."id" ORDER BY "created_at" DESC, "id" DESC LIMIT 1);
