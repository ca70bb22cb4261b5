-- The revision that took a correction in; null while it is open.
ALTER TABLE "correction" ADD COLUMN "taken_in_id" UUID;
CREATE INDEX "correction_taken_in_id_idx" ON "correction"("taken_in_id");
-- A revision goes only with its pattern, which takes the call and its corrections too.
ALTER TABLE "correction" ADD CONSTRAINT "correction_taken_in_id_fkey" FOREIGN KEY ("taken_in_id") REFERENCES "revision"("id") ON DELETE NO ACTION ON UPDATE CASCADE DEFERRABLE INITIALLY DEFERRED;

-- How each tester deals with a correction.
CREATE TYPE "correction_answer_kind" AS ENUM ('following', 'changed', 'kept', 'absent');

CREATE TABLE "correction_answer" (
    "tester_id" UUID NOT NULL,
    "correction_id" UUID NOT NULL,
    "answer" "correction_answer_kind" NOT NULL,
    "worked" JSONB,
    "answered_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "correction_answer_pkey" PRIMARY KEY ("tester_id", "correction_id")
);
CREATE INDEX "correction_answer_correction_id_idx" ON "correction_answer"("correction_id");
ALTER TABLE "correction_answer" ADD CONSTRAINT "correction_answer_tester_id_fkey" FOREIGN KEY ("tester_id") REFERENCES "tester"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "correction_answer" ADD CONSTRAINT "correction_answer_correction_id_fkey" FOREIGN KEY ("correction_id") REFERENCES "correction"("id") ON DELETE CASCADE ON UPDATE CASCADE;
