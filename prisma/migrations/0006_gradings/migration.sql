-- CreateEnum
CREATE TYPE "grading_status" AS ENUM ('waiting', 'done', 'stopped', 'late');

-- CreateTable
CREATE TABLE "grading" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "pattern_id" UUID NOT NULL,
    "account_id" UUID,
    "request" JSONB NOT NULL,
    "status" "grading_status" NOT NULL DEFAULT 'waiting',
    "output" TEXT,
    "submission_key" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "grading_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "grading_submission_key_key" ON "grading"("submission_key");

-- CreateIndex
CREATE INDEX "grading_pattern_id_account_id_idx" ON "grading"("pattern_id", "account_id");

-- AddForeignKey
ALTER TABLE "grading" ADD CONSTRAINT "grading_pattern_id_fkey" FOREIGN KEY ("pattern_id") REFERENCES "pattern"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "grading" ADD CONSTRAINT "grading_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- What the schema above cannot say.

ALTER TABLE "grading" ADD CONSTRAINT "grading_done_has_output" CHECK (("status" = 'done') = ("output" IS NOT NULL));

-- A grading ends once, however it ends; a deleted account leaves it behind without a name.
CREATE TRIGGER "grading_ends_once" BEFORE UPDATE ON "grading" FOR EACH ROW
  WHEN ((OLD."id", OLD."pattern_id", OLD."request", OLD."submission_key", OLD."created_at")
        IS DISTINCT FROM (NEW."id", NEW."pattern_id", NEW."request", NEW."submission_key", NEW."created_at")
        OR (OLD."status" <> 'waiting' AND (NEW."status", NEW."output") IS DISTINCT FROM (OLD."status", OLD."output")))
  EXECUTE FUNCTION refuse_update();
