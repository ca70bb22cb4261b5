-- Another value that a person uses in the place of a reading, with their reason; what was typed stays in the report.
ALTER TABLE "decision" ADD COLUMN "used_cm" DOUBLE PRECISION,
                       ADD COLUMN "reason" TEXT NOT NULL DEFAULT '';
ALTER TABLE "decision" ADD CONSTRAINT "decision_uses_a_length"
  CHECK ("used_cm" IS NULL OR ("part" = 'readings' AND "decision" = 'keep' AND "used_cm" > 0 AND "used_cm" < 'Infinity'));

-- What the designer asks a tester about one number of their report, and what came of it.
CREATE TABLE "number_question" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "tester_id" UUID NOT NULL,
    "field" TEXT NOT NULL,
    "about" TEXT NOT NULL,
    "asks" TEXT NOT NULL,
    "asked_by_id" UUID,
    "idempotency_key" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "answer" TEXT,
    "changed_to" TEXT,
    "answered_at" TIMESTAMPTZ(3),
    "seen_at" TIMESTAMPTZ(3),

    CONSTRAINT "number_question_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "number_question_asks_something" CHECK ("asks" <> ''),
    CONSTRAINT "number_question_has_one_answer" CHECK (num_nonnulls("answer", "changed_to") = num_nonnulls("answered_at")),
    CONSTRAINT "number_question_seen_once_answered" CHECK ("seen_at" IS NULL OR "answered_at" IS NOT NULL)
);
CREATE UNIQUE INDEX "number_question_idempotency_key_key" ON "number_question"("idempotency_key");
CREATE INDEX "number_question_tester_id_idx" ON "number_question"("tester_id");
CREATE INDEX "number_question_asked_by_id_idx" ON "number_question"("asked_by_id");
ALTER TABLE "number_question" ADD CONSTRAINT "number_question_tester_id_fkey" FOREIGN KEY ("tester_id") REFERENCES "tester"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "number_question" ADD CONSTRAINT "number_question_asked_by_id_fkey" FOREIGN KEY ("asked_by_id") REFERENCES "account"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- Whether it was the designer who ended their test, and not they themselves.
ALTER TABLE "tester" ADD COLUMN "stopped_by_designer" BOOLEAN NOT NULL DEFAULT false;
ALTER TABLE "tester" ADD CONSTRAINT "tester_stopped_by_designer_is_stopped" CHECK (NOT "stopped_by_designer" OR "stopped_at" IS NOT NULL);
