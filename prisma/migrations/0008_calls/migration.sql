-- CreateEnum
CREATE TYPE "application_word" AS ENUM ('yes', 'maybe', 'no');

-- CreateEnum
CREATE TYPE "application_hold" AS ENUM ('size', 'waiting');

-- CreateEnum
CREATE TYPE "milestone_word" AS ENUM ('track', 'behind', 'stuck', 'stop');

-- AlterTable
ALTER TABLE "call" ADD COLUMN     "closed_at" TIMESTAMPTZ(3),
ADD COLUMN     "submission_key" UUID;

-- AlterTable
ALTER TABLE "tester" ADD COLUMN     "accepted_at" TIMESTAMPTZ(3),
ADD COLUMN     "account_id" UUID,
ADD COLUMN     "application_id" UUID,
ADD COLUMN     "dates" JSONB,
ADD COLUMN     "declined_at" TIMESTAMPTZ(3),
ADD COLUMN     "invitation_ends_at" TIMESTAMPTZ(3),
ADD COLUMN     "invited_at" TIMESTAMPTZ(3),
ADD COLUMN     "link_version" INTEGER NOT NULL DEFAULT 1,
ADD COLUMN     "note" TEXT NOT NULL DEFAULT '',
ADD COLUMN     "revision_id" UUID,
ADD COLUMN     "size" TEXT,
ADD COLUMN     "stopped_at" TIMESTAMPTZ(3),
ADD COLUMN     "terms" TEXT NOT NULL DEFAULT 'us',
ADD COLUMN     "time_zone" TEXT,
ADD COLUMN     "unit" TEXT NOT NULL DEFAULT 'cm',
ADD COLUMN     "withdrawn_at" TIMESTAMPTZ(3);

-- The size of who has reported stands in her report, in the newest where it was mended.
UPDATE "tester" SET "size" = coalesce(
  (SELECT "document" ->> 'size' FROM "report" WHERE "tester_id" = "tester"."id" ORDER BY "version" DESC LIMIT 1), '');
ALTER TABLE "tester" ALTER COLUMN "size" SET NOT NULL;

-- AlterTable
ALTER TABLE "tester_contact" ADD COLUMN     "email" TEXT;

-- CreateTable
CREATE TABLE "opening" (
    "call_id" UUID NOT NULL,
    "document" JSONB NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "published_at" TIMESTAMPTZ(3),
    "apply_until" TIMESTAMPTZ(3),

    CONSTRAINT "opening_pkey" PRIMARY KEY ("call_id")
);

-- CreateTable
CREATE TABLE "agreement" (
    "call_id" UUID NOT NULL,
    "version" INTEGER NOT NULL,
    "text" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "agreement_pkey" PRIMARY KEY ("call_id","version")
);

-- CreateTable
CREATE TABLE "application" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "call_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "account_id" UUID,
    "document" JSONB NOT NULL,
    "agreement_version" INTEGER NOT NULL,
    "agreed_at" TIMESTAMPTZ(3) NOT NULL,
    "submission_key" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "withdrawn_at" TIMESTAMPTZ(3),
    "word" "application_word",
    "size" TEXT,
    "hold" "application_hold",

    CONSTRAINT "application_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "application_contact" (
    "application_id" UUID NOT NULL,
    "call_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,

    CONSTRAINT "application_contact_pkey" PRIMARY KEY ("application_id")
);

-- CreateTable
CREATE TABLE "application_body" (
    "application_id" UUID NOT NULL,
    "measurements" JSONB NOT NULL,
    "typed" JSONB NOT NULL DEFAULT '{}',

    CONSTRAINT "application_body_pkey" PRIMARY KEY ("application_id")
);

-- CreateTable
CREATE TABLE "report_draft" (
    "tester_id" UUID NOT NULL,
    "typed" JSONB NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "report_draft_pkey" PRIMARY KEY ("tester_id")
);

-- CreateTable
CREATE TABLE "milestone" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "tester_id" UUID NOT NULL,
    "word" "milestone_word" NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "submission_key" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "milestone_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "question" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "call_id" UUID NOT NULL,
    "tester_id" UUID,
    "revision_id" UUID NOT NULL,
    "place" JSONB NOT NULL,
    "asks" TEXT NOT NULL,
    "submission_key" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "answer" TEXT,
    "answered_at" TIMESTAMPTZ(3),
    "answered_by_id" UUID,

    CONSTRAINT "question_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "trouble_spot" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "tester_id" UUID NOT NULL,
    "revision_id" UUID NOT NULL,
    "place" JSONB NOT NULL,
    "happened" TEXT NOT NULL,
    "did" TEXT NOT NULL DEFAULT '',
    "submission_key" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "trouble_spot_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "application_submission_key_key" ON "application"("submission_key");

-- CreateIndex
CREATE UNIQUE INDEX "application_call_id_position_key" ON "application"("call_id", "position");

-- CreateIndex
CREATE UNIQUE INDEX "application_call_id_account_id_key" ON "application"("call_id", "account_id");

-- CreateIndex
CREATE UNIQUE INDEX "application_contact_call_id_email_key" ON "application_contact"("call_id", "email");

-- CreateIndex
CREATE UNIQUE INDEX "milestone_submission_key_key" ON "milestone"("submission_key");

-- CreateIndex
CREATE INDEX "milestone_tester_id_created_at_idx" ON "milestone"("tester_id", "created_at");

-- CreateIndex
CREATE UNIQUE INDEX "question_submission_key_key" ON "question"("submission_key");

-- CreateIndex
CREATE INDEX "question_call_id_idx" ON "question"("call_id");

-- CreateIndex
CREATE UNIQUE INDEX "trouble_spot_submission_key_key" ON "trouble_spot"("submission_key");

-- CreateIndex
CREATE INDEX "trouble_spot_tester_id_idx" ON "trouble_spot"("tester_id");

-- CreateIndex
CREATE UNIQUE INDEX "call_submission_key_key" ON "call"("submission_key");

-- CreateIndex
CREATE UNIQUE INDEX "tester_application_id_key" ON "tester"("application_id");

-- CreateIndex
CREATE UNIQUE INDEX "tester_call_id_account_id_key" ON "tester"("call_id", "account_id");

-- AddForeignKey
ALTER TABLE "opening" ADD CONSTRAINT "opening_call_id_fkey" FOREIGN KEY ("call_id") REFERENCES "call"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "agreement" ADD CONSTRAINT "agreement_call_id_fkey" FOREIGN KEY ("call_id") REFERENCES "call"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "application" ADD CONSTRAINT "application_call_id_fkey" FOREIGN KEY ("call_id") REFERENCES "call"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "application" ADD CONSTRAINT "application_call_id_agreement_version_fkey" FOREIGN KEY ("call_id", "agreement_version") REFERENCES "agreement"("call_id", "version") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "application" ADD CONSTRAINT "application_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "application_contact" ADD CONSTRAINT "application_contact_application_id_fkey" FOREIGN KEY ("application_id") REFERENCES "application"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "application_body" ADD CONSTRAINT "application_body_application_id_fkey" FOREIGN KEY ("application_id") REFERENCES "application"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "tester" ADD CONSTRAINT "tester_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "revision"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "tester" ADD CONSTRAINT "tester_application_id_fkey" FOREIGN KEY ("application_id") REFERENCES "application"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "tester" ADD CONSTRAINT "tester_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "report_draft" ADD CONSTRAINT "report_draft_tester_id_fkey" FOREIGN KEY ("tester_id") REFERENCES "tester"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "milestone" ADD CONSTRAINT "milestone_tester_id_fkey" FOREIGN KEY ("tester_id") REFERENCES "tester"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "question" ADD CONSTRAINT "question_call_id_fkey" FOREIGN KEY ("call_id") REFERENCES "call"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "question" ADD CONSTRAINT "question_tester_id_fkey" FOREIGN KEY ("tester_id") REFERENCES "tester"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "question" ADD CONSTRAINT "question_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "revision"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "question" ADD CONSTRAINT "question_answered_by_id_fkey" FOREIGN KEY ("answered_by_id") REFERENCES "account"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "trouble_spot" ADD CONSTRAINT "trouble_spot_tester_id_fkey" FOREIGN KEY ("tester_id") REFERENCES "tester"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "trouble_spot" ADD CONSTRAINT "trouble_spot_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "revision"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- What the schema above cannot say.

CREATE TRIGGER "agreement_never_changes" BEFORE UPDATE ON "agreement" FOR EACH ROW EXECUTE FUNCTION refuse_update();
ALTER TABLE "opening" ADD CONSTRAINT "opening_published_has_end" CHECK ("published_at" IS NULL OR "apply_until" IS NOT NULL);
ALTER TABLE "call" ADD CONSTRAINT "call_closed_at_its_moment" CHECK ("closed_at" IS NULL OR "status" = 'closed');
ALTER TABLE "application_contact" ADD CONSTRAINT "application_contact_email_small" CHECK ("email" = lower("email"));
ALTER TABLE "application" ADD CONSTRAINT "application_held_size" CHECK ("hold" IS DISTINCT FROM 'size' OR "size" IS NOT NULL);
ALTER TABLE "application" ADD CONSTRAINT "application_waiting_without_size" CHECK ("hold" IS DISTINCT FROM 'waiting' OR "size" IS NULL);
ALTER TABLE "tester" ADD CONSTRAINT "tester_unit" CHECK ("unit" IN ('cm', 'in'));
ALTER TABLE "tester" ADD CONSTRAINT "tester_terms" CHECK ("terms" IN ('us', 'uk'));
-- Who is invited has a revision to work from, and an end to answer by.
ALTER TABLE "tester" ADD CONSTRAINT "tester_invited_to_something" CHECK ("invited_at" IS NULL OR ("revision_id" IS NOT NULL AND "invitation_ends_at" > "invited_at"));
-- Accepted, declined or withdrawn: one of them, and only after she was invited.
ALTER TABLE "tester" ADD CONSTRAINT "tester_one_answer" CHECK (num_nonnulls("accepted_at", "declined_at", "withdrawn_at") <= CASE WHEN "invited_at" IS NULL THEN 0 ELSE 1 END);
ALTER TABLE "tester" ADD CONSTRAINT "tester_stops_after_yes" CHECK ("stopped_at" IS NULL OR "accepted_at" IS NOT NULL);
CREATE TRIGGER "milestone_never_changes" BEFORE UPDATE ON "milestone" FOR EACH ROW EXECUTE FUNCTION refuse_update();
ALTER TABLE "question" ADD CONSTRAINT "question_answered_at_its_moment" CHECK (("answer" IS NULL) = ("answered_at" IS NULL));
