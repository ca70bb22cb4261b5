-- Counts that testers really worked otherwise than they said, as a proposal that was taken tells.
ALTER TABLE "revision_evidence" ADD COLUMN "misworked" JSONB NOT NULL DEFAULT '[]';

-- What the schema above cannot say.

ALTER TABLE "revision_evidence" ADD CONSTRAINT "revision_evidence_misworked_list" CHECK (jsonb_typeof("misworked") = 'array');

DROP TRIGGER "revision_evidence_never_changes" ON "revision_evidence";

-- A deleted call is let go of; the frozen texts stay.
CREATE TRIGGER "revision_evidence_never_changes" BEFORE UPDATE ON "revision_evidence" FOR EACH ROW
  WHEN ((OLD."revision_id", OLD."take", OLD."input_hash", OLD."engine_version", OLD."analysis", OLD."plan", OLD."misworked", OLD."created_at")
        IS DISTINCT FROM (NEW."revision_id", NEW."take", NEW."input_hash", NEW."engine_version", NEW."analysis", NEW."plan", NEW."misworked", NEW."created_at")
        OR NEW."call_id" IS NOT NULL)
  EXECUTE FUNCTION refuse_update();
