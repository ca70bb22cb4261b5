-- A pattern keeps the key of the form that made it, so that a form sent twice makes one pattern.
ALTER TABLE "pattern" ADD COLUMN "submission_key" UUID;

-- CreateIndex
CREATE UNIQUE INDEX "pattern_submission_key_key" ON "pattern"("submission_key");
