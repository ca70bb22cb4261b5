-- CreateEnum
CREATE TYPE "length_unit" AS ENUM ('cm', 'in');

-- CreateEnum
CREATE TYPE "stitch_terms" AS ENUM ('us', 'uk');

-- CreateEnum
CREATE TYPE "item_decision" AS ENUM ('keep', 'exclude');

-- The kinds say what these checks said.
ALTER TABLE "account" DROP CONSTRAINT "account_unit_known";
ALTER TABLE "tester" DROP CONSTRAINT "tester_unit", DROP CONSTRAINT "tester_terms";
ALTER TABLE "decision" DROP CONSTRAINT "decision_known";

-- AlterTable
ALTER TABLE "account" ALTER COLUMN "unit" DROP DEFAULT,
ALTER COLUMN "unit" TYPE "length_unit" USING "unit"::"length_unit",
ALTER COLUMN "unit" SET DEFAULT 'cm';

-- AlterTable
ALTER TABLE "tester" ALTER COLUMN "unit" DROP DEFAULT,
ALTER COLUMN "unit" TYPE "length_unit" USING "unit"::"length_unit",
ALTER COLUMN "unit" SET DEFAULT 'cm',
ALTER COLUMN "terms" DROP DEFAULT,
ALTER COLUMN "terms" TYPE "stitch_terms" USING "terms"::"stitch_terms",
ALTER COLUMN "terms" SET DEFAULT 'us';

-- AlterTable
ALTER TABLE "decision"
ALTER COLUMN "decision" TYPE "item_decision"
  USING (CASE "decision" WHEN 'set-aside' THEN 'exclude' ELSE "decision" END)::"item_decision",
ADD COLUMN     "decided_by_id" UUID,
ADD COLUMN     "decided_at" TIMESTAMPTZ(3);

-- CreateIndex
CREATE INDEX "revision_created_by_id_idx" ON "revision"("created_by_id");

-- CreateIndex
CREATE INDEX "draft_base_id_idx" ON "draft"("base_id");

-- CreateIndex
CREATE INDEX "draft_updated_by_id_idx" ON "draft"("updated_by_id");

-- CreateIndex
CREATE INDEX "late_save_account_id_idx" ON "late_save"("account_id");

-- CreateIndex
CREATE INDEX "invitation_accepted_by_id_idx" ON "invitation"("accepted_by_id");

-- CreateIndex
CREATE INDEX "grading_account_id_idx" ON "grading"("account_id");

-- CreateIndex
CREATE INDEX "application_account_id_idx" ON "application"("account_id");

-- CreateIndex
CREATE INDEX "application_call_id_agreement_version_idx" ON "application"("call_id", "agreement_version");

-- CreateIndex
CREATE INDEX "tester_account_id_idx" ON "tester"("account_id");

-- CreateIndex
CREATE INDEX "tester_revision_id_idx" ON "tester"("revision_id");

-- CreateIndex
CREATE INDEX "question_tester_id_idx" ON "question"("tester_id");

-- CreateIndex
CREATE INDEX "question_revision_id_idx" ON "question"("revision_id");

-- CreateIndex
CREATE INDEX "question_answered_by_id_idx" ON "question"("answered_by_id");

-- CreateIndex
CREATE INDEX "trouble_spot_revision_id_idx" ON "trouble_spot"("revision_id");

-- CreateIndex
CREATE INDEX "decision_decided_by_id_idx" ON "decision"("decided_by_id");

-- CreateIndex
CREATE INDEX "plan_account_id_idx" ON "plan"("account_id");

-- CreateIndex
CREATE INDEX "revision_evidence_call_id_idx" ON "revision_evidence"("call_id");

-- AddForeignKey
ALTER TABLE "decision" ADD CONSTRAINT "decision_decided_by_id_fkey" FOREIGN KEY ("decided_by_id") REFERENCES "account"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- What the schema above cannot say.

ALTER TABLE "decision" ADD CONSTRAINT "decision_position_not_negative" CHECK ("position" >= 0);

-- A revision goes only with its pattern, and an agreement only with its call. Asked at the transaction's end, for a
-- pattern and a call take with them what refers to these by another way.
ALTER TABLE "draft" DROP CONSTRAINT "draft_base_id_fkey",
ADD CONSTRAINT "draft_base_id_fkey" FOREIGN KEY ("base_id") REFERENCES "revision"("id") ON DELETE NO ACTION ON UPDATE CASCADE DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE "tester" DROP CONSTRAINT "tester_revision_id_fkey",
ADD CONSTRAINT "tester_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "revision"("id") ON DELETE NO ACTION ON UPDATE CASCADE DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE "report" DROP CONSTRAINT "report_revision_id_fkey",
ADD CONSTRAINT "report_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "revision"("id") ON DELETE NO ACTION ON UPDATE CASCADE DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE "question" DROP CONSTRAINT "question_revision_id_fkey",
ADD CONSTRAINT "question_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "revision"("id") ON DELETE NO ACTION ON UPDATE CASCADE DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE "trouble_spot" DROP CONSTRAINT "trouble_spot_revision_id_fkey",
ADD CONSTRAINT "trouble_spot_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "revision"("id") ON DELETE NO ACTION ON UPDATE CASCADE DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE "application" DROP CONSTRAINT "application_call_id_agreement_version_fkey",
ADD CONSTRAINT "application_call_id_agreement_version_fkey" FOREIGN KEY ("call_id", "agreement_version") REFERENCES "agreement"("call_id", "version") ON DELETE NO ACTION ON UPDATE CASCADE DEFERRABLE INITIALLY DEFERRED;

-- Nobody could reach a pattern without its owner: an account goes after the patterns that it owns.
CREATE FUNCTION refuse_ownerless_pattern() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT FROM pattern WHERE id = OLD.pattern_id)
     AND NOT EXISTS (SELECT FROM membership WHERE pattern_id = OLD.pattern_id AND role = 'owner') THEN
    RAISE EXCEPTION 'a pattern keeps its owner: delete the pattern first' USING ERRCODE = 'restrict_violation';
  END IF;
  RETURN NULL;
END
$$;
CREATE CONSTRAINT TRIGGER "pattern_keeps_owner" AFTER DELETE ON "membership" DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW WHEN (OLD."role" = 'owner') EXECUTE FUNCTION refuse_ownerless_pattern();
