-- What the designer's earlier tests showed of the spreads, as it was when a test got its first report. It holds nothing of any person.
ALTER TABLE "call"
  ADD COLUMN "prior" jsonb,
  ADD COLUMN "prior_at" timestamptz(3),
  ADD COLUMN "uses_prior" boolean NOT NULL DEFAULT true;

-- Tests that have reports already started without it, and go on so.
UPDATE "call" SET "prior_at" = CURRENT_TIMESTAMP
WHERE EXISTS (SELECT FROM "tester" JOIN "report" ON "report"."tester_id" = "tester"."id" WHERE "tester"."call_id" = "call"."id");

CREATE TRIGGER "call_prior_never_changes" BEFORE UPDATE OF "prior", "prior_at" ON "call" FOR EACH ROW
  WHEN (OLD."prior_at" IS NOT NULL AND (OLD."prior", OLD."prior_at") IS DISTINCT FROM (NEW."prior", NEW."prior_at"))
  EXECUTE FUNCTION refuse_update();
