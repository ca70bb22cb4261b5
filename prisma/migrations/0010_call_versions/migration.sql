-- A call has a version, raised only by what changes what its analysis reads. The call's row is the worker's queue.

ALTER TABLE "call"
  ADD COLUMN "version" integer NOT NULL DEFAULT 1,
  ADD COLUMN "version_raised_at" timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP;

-- Every call of a pattern reads its newest revision. In order of their ids, so that two savings never wait for each other.
CREATE FUNCTION raise_call_versions() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM 1 FROM "call" WHERE "pattern_id" = NEW."pattern_id" ORDER BY "id" FOR UPDATE;
  UPDATE "call" SET "version" = "version" + 1, "version_raised_at" = CURRENT_TIMESTAMP
  WHERE "pattern_id" = NEW."pattern_id";
  RETURN NULL;
END
$$;

CREATE TRIGGER "revision_raises_call_versions" AFTER INSERT ON "revision"
  FOR EACH ROW EXECUTE FUNCTION raise_call_versions();

-- Wakes the worker when the transaction commits; many in one transaction are announced once.
CREATE FUNCTION announce_work() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_notify('sizewright_work', TG_TABLE_NAME);
  RETURN NULL;
END
$$;

CREATE TRIGGER "call_announces_work" AFTER INSERT OR UPDATE OF "version" ON "call"
  FOR EACH STATEMENT EXECUTE FUNCTION announce_work();

-- Analyses are computed anew, in parts that pages read apart. None holds a body, a name or a person's words.
DROP TABLE "analysis";

CREATE TYPE "analysis_status" AS ENUM ('done', 'stopped', 'failed');

CREATE TABLE "analysis" (
  "id" uuid PRIMARY KEY DEFAULT gen_random_uuid(),
  "call_id" uuid NOT NULL REFERENCES "call" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "call_version" integer NOT NULL,
  "engine_version" text NOT NULL,
  "status" "analysis_status" NOT NULL,
  "message" text,
  "revision_id" uuid NOT NULL REFERENCES "revision" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "differences" jsonb,
  "gauges" jsonb,
  "consistency" jsonb,
  "flagged" jsonb,
  "yarn" jsonb,
  "fit" jsonb,
  "method" jsonb,
  "left_out" jsonb NOT NULL DEFAULT '[]',
  "created_at" timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP
);

CREATE UNIQUE INDEX "analysis_call_id_call_version_engine_version_key"
  ON "analysis" ("call_id", "call_version", "engine_version");
CREATE INDEX "analysis_revision_id_idx" ON "analysis" ("revision_id");

CREATE TABLE "analysis_tester" (
  "analysis_id" uuid NOT NULL REFERENCES "analysis" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "tester_id" uuid NOT NULL REFERENCES "tester" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "position" integer NOT NULL,
  "size" text NOT NULL,
  "drift_across" double precision,
  "drift_along" double precision,
  "comparisons" jsonb NOT NULL,
  "swatches" jsonb NOT NULL,
  "off_gauge" jsonb,
  "without_swatch" jsonb NOT NULL,
  "readings" jsonb NOT NULL,
  "yarn" jsonb NOT NULL,
  PRIMARY KEY ("analysis_id", "tester_id")
);

CREATE INDEX "analysis_tester_tester_id_idx" ON "analysis_tester" ("tester_id");
CREATE INDEX "analysis_tester_analysis_id_position_idx" ON "analysis_tester" ("analysis_id", "position");
CREATE INDEX "analysis_tester_analysis_id_size_idx" ON "analysis_tester" ("analysis_id", "size");

-- Plans that were not saved rest on analyses that are gone.
DELETE FROM "plan";
DROP TRIGGER "plan_never_changes" ON "plan";
ALTER TABLE "plan" DROP COLUMN "input_hash", DROP COLUMN "take",
  ADD COLUMN "call_version" integer NOT NULL,
  ADD COLUMN "request" jsonb NOT NULL,
  ADD COLUMN "differences" jsonb NOT NULL;

CREATE TRIGGER "plan_never_changes" BEFORE UPDATE ON "plan" FOR EACH ROW
  WHEN ((OLD."id", OLD."call_id", OLD."request", OLD."base_number", OLD."call_version", OLD."engine_version", OLD."differences", OLD."submission_key", OLD."created_at")
        IS DISTINCT FROM (NEW."id", NEW."call_id", NEW."request", NEW."base_number", NEW."call_version", NEW."engine_version", NEW."differences", NEW."submission_key", NEW."created_at")
        OR (OLD."output" IS NOT NULL AND NEW."output" IS DISTINCT FROM OLD."output"))
  EXECUTE FUNCTION refuse_update();

ALTER TYPE "grading_status" ADD VALUE 'failed';

CREATE TRIGGER "plan_announces_work" AFTER INSERT ON "plan"
  FOR EACH STATEMENT EXECUTE FUNCTION announce_work();
CREATE TRIGGER "grading_announces_work" AFTER INSERT ON "grading"
  FOR EACH STATEMENT EXECUTE FUNCTION announce_work();

-- Evidence of before keeps its hash; what is saved from now on names the call's version.
ALTER TABLE "revision_evidence" ALTER COLUMN "input_hash" DROP NOT NULL,
  ADD COLUMN "call_version" integer;

DROP SCHEMA IF EXISTS "pgboss" CASCADE;
