-- What a tester's own earlier tests with the same designer showed of their tape and their garments, with their consent.
ALTER TABLE "tester"
  ADD COLUMN "habits_since" timestamptz(3),
  ADD COLUMN "habits_read_at" timestamptz(3);

-- Those who have reported already are analysed without, and go on so.
UPDATE "tester" SET "habits_read_at" = CURRENT_TIMESTAMP
WHERE EXISTS (SELECT FROM "report" WHERE "report"."tester_id" = "tester"."id");

-- One row a pair of tests, so that what one of them showed goes with it.
CREATE TABLE "tester_habit" (
  "tester_id" uuid NOT NULL REFERENCES "tester" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "from_id" uuid NOT NULL REFERENCES "tester" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "shown" jsonb NOT NULL,
  PRIMARY KEY ("tester_id", "from_id")
);
CREATE INDEX "tester_habit_from_id_idx" ON "tester_habit" ("from_id");

-- Results that were calculated with it are calculated again without.
CREATE FUNCTION raise_version_without_habit() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  UPDATE "call" SET "version" = "version" + 1, "version_raised_at" = CURRENT_TIMESTAMP
  WHERE "id" = (SELECT "call_id" FROM "tester" WHERE "id" = OLD."tester_id");
  RETURN NULL;
END $$;
CREATE TRIGGER "habit_raises_call_version" AFTER DELETE ON "tester_habit"
  FOR EACH ROW EXECUTE FUNCTION raise_version_without_habit();
