-- Reports of the test that a test follows count in its results too, where the designer wants it.
ALTER TABLE "call" ADD COLUMN "counts_earlier" boolean NOT NULL DEFAULT false;

-- A change of the earlier test, such as a new report or a forgotten tester, is one of those that count it too.
CREATE FUNCTION raise_following_call_versions() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  UPDATE "call" SET "version" = "version" + 1, "version_raised_at" = CURRENT_TIMESTAMP
  WHERE "follows_id" = NEW."id" AND "counts_earlier";
  RETURN NULL;
END
$$;

CREATE TRIGGER "call_raises_following_versions" AFTER UPDATE OF "version" ON "call"
  FOR EACH ROW WHEN (NEW."version" > OLD."version") EXECUTE FUNCTION raise_following_call_versions();

-- The earlier test's row before those that follow it, as a change of a report locks them: two writers never wait for each other.
CREATE OR REPLACE FUNCTION raise_call_versions() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM 1 FROM "call" WHERE "pattern_id" = NEW."pattern_id" ORDER BY "created_at", "id" FOR UPDATE;
  UPDATE "call" SET "version" = "version" + 1, "version_raised_at" = CURRENT_TIMESTAMP
  WHERE "pattern_id" = NEW."pattern_id";
  RETURN NULL;
END
$$;
