-- Errata that a designer publishes to the testers of a call, and what each tester has read.
CREATE TABLE "correction" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "call_id" UUID NOT NULL,
    "revision_id" UUID NOT NULL,
    "place" JSONB,
    "sizes" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "text" TEXT NOT NULL,
    "author_id" UUID,
    "idempotency_key" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "correction_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "correction_says_something" CHECK ("text" <> ''),
    -- A Prisma schema cannot say that a list is never null.
    CONSTRAINT "correction_lists_sizes" CHECK ("sizes" IS NOT NULL)
);
CREATE UNIQUE INDEX "correction_idempotency_key_key" ON "correction"("idempotency_key");
CREATE INDEX "correction_call_id_created_at_idx" ON "correction"("call_id", "created_at");
CREATE INDEX "correction_revision_id_idx" ON "correction"("revision_id");
CREATE INDEX "correction_author_id_idx" ON "correction"("author_id");
ALTER TABLE "correction" ADD CONSTRAINT "correction_call_id_fkey" FOREIGN KEY ("call_id") REFERENCES "call"("id") ON DELETE CASCADE ON UPDATE CASCADE;
-- A revision goes only with its pattern, which takes the call and its corrections too.
ALTER TABLE "correction" ADD CONSTRAINT "correction_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "revision"("id") ON DELETE NO ACTION ON UPDATE CASCADE DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE "correction" ADD CONSTRAINT "correction_author_id_fkey" FOREIGN KEY ("author_id") REFERENCES "account"("id") ON DELETE SET NULL ON UPDATE CASCADE;

CREATE TABLE "correction_read" (
    "tester_id" UUID NOT NULL,
    "correction_id" UUID NOT NULL,
    "read_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "correction_read_pkey" PRIMARY KEY ("tester_id", "correction_id")
);
CREATE INDEX "correction_read_correction_id_idx" ON "correction_read"("correction_id");
ALTER TABLE "correction_read" ADD CONSTRAINT "correction_read_tester_id_fkey" FOREIGN KEY ("tester_id") REFERENCES "tester"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "correction_read" ADD CONSTRAINT "correction_read_correction_id_fkey" FOREIGN KEY ("correction_id") REFERENCES "correction"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- An answer that is changed is new again, so the one that was read is named by its moment.
CREATE TABLE "answer_read" (
    "tester_id" UUID NOT NULL,
    "question_id" UUID NOT NULL,
    "answered_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "answer_read_pkey" PRIMARY KEY ("tester_id", "question_id")
);
CREATE INDEX "answer_read_question_id_idx" ON "answer_read"("question_id");
ALTER TABLE "answer_read" ADD CONSTRAINT "answer_read_tester_id_fkey" FOREIGN KEY ("tester_id") REFERENCES "tester"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "answer_read" ADD CONSTRAINT "answer_read_question_id_fkey" FOREIGN KEY ("question_id") REFERENCES "question"("id") ON DELETE CASCADE ON UPDATE CASCADE;

ALTER TABLE "tester" ADD COLUMN "read_revision_number" INTEGER;
