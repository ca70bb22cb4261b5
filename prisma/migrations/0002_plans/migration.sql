-- An analysis that took too long is kept as such.
ALTER TABLE "analysis" ALTER COLUMN "output" DROP NOT NULL;

-- CreateTable
CREATE TABLE "plan" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "call_id" UUID NOT NULL,
    "account_id" UUID,
    "take" JSONB NOT NULL,
    "base_number" INTEGER NOT NULL,
    "input_hash" TEXT NOT NULL,
    "engine_version" TEXT NOT NULL,
    "output" TEXT,
    "submission_key" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "plan_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "revision_evidence" (
    "revision_id" UUID NOT NULL,
    "call_id" UUID,
    "take" JSONB NOT NULL,
    "input_hash" TEXT NOT NULL,
    "engine_version" TEXT NOT NULL,
    "analysis" TEXT NOT NULL,
    "plan" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "revision_evidence_pkey" PRIMARY KEY ("revision_id")
);

-- CreateIndex
CREATE UNIQUE INDEX "plan_submission_key_key" ON "plan"("submission_key");

-- CreateIndex
CREATE INDEX "plan_call_id_idx" ON "plan"("call_id");

-- AddForeignKey
ALTER TABLE "plan" ADD CONSTRAINT "plan_call_id_fkey" FOREIGN KEY ("call_id") REFERENCES "call"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan" ADD CONSTRAINT "plan_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "revision_evidence" ADD CONSTRAINT "revision_evidence_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "revision"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "revision_evidence" ADD CONSTRAINT "revision_evidence_call_id_fkey" FOREIGN KEY ("call_id") REFERENCES "call"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- What the schema above cannot say.

ALTER TABLE "plan" ADD CONSTRAINT "plan_take_some" CHECK (jsonb_typeof("take") = 'array' AND jsonb_array_length("take") > 0);
ALTER TABLE "plan" ADD CONSTRAINT "plan_base_number_positive" CHECK ("base_number" > 0);

-- A plan is reckoned once; a deleted account leaves it behind without a name.
CREATE TRIGGER "plan_never_changes" BEFORE UPDATE ON "plan" FOR EACH ROW
  WHEN ((OLD."id", OLD."call_id", OLD."take", OLD."base_number", OLD."input_hash", OLD."engine_version", OLD."submission_key", OLD."created_at")
        IS DISTINCT FROM (NEW."id", NEW."call_id", NEW."take", NEW."base_number", NEW."input_hash", NEW."engine_version", NEW."submission_key", NEW."created_at")
        OR (OLD."output" IS NOT NULL AND NEW."output" IS DISTINCT FROM OLD."output"))
  EXECUTE FUNCTION refuse_update();

-- A deleted call is let go of; the frozen texts stay.
CREATE TRIGGER "revision_evidence_never_changes" BEFORE UPDATE ON "revision_evidence" FOR EACH ROW
  WHEN ((OLD."revision_id", OLD."take", OLD."input_hash", OLD."engine_version", OLD."analysis", OLD."plan", OLD."created_at")
        IS DISTINCT FROM (NEW."revision_id", NEW."take", NEW."input_hash", NEW."engine_version", NEW."analysis", NEW."plan", NEW."created_at")
        OR NEW."call_id" IS NOT NULL)
  EXECUTE FUNCTION refuse_update();
