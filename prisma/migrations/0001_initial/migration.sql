-- CreateSchema
CREATE SCHEMA IF NOT EXISTS "public";

-- CreateEnum
CREATE TYPE "role" AS ENUM ('owner', 'editor', 'viewer');

-- CreateEnum
CREATE TYPE "call_status" AS ENUM ('open', 'closed');

-- CreateEnum
CREATE TYPE "decision_part" AS ENUM ('swatches', 'readings', 'yarn');

-- CreateTable
CREATE TABLE "account" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "email" TEXT NOT NULL,
    "email_proved_at" TIMESTAMPTZ(3),
    "name" TEXT NOT NULL,
    "password_hash" TEXT NOT NULL,
    "session_version" INTEGER NOT NULL DEFAULT 1,
    "unit" TEXT NOT NULL DEFAULT 'cm',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "account_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "pattern" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "invented" BOOLEAN NOT NULL DEFAULT false,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "pattern_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "membership" (
    "pattern_id" UUID NOT NULL,
    "account_id" UUID NOT NULL,
    "role" "role" NOT NULL,

    CONSTRAINT "membership_pkey" PRIMARY KEY ("pattern_id","account_id")
);

-- CreateTable
CREATE TABLE "revision" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "pattern_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "document" JSONB NOT NULL,
    "reason" TEXT NOT NULL,
    "created_by_id" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "revision_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "draft" (
    "pattern_id" UUID NOT NULL,
    "base_id" UUID NOT NULL,
    "typed" JSONB NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "updated_by_id" UUID,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "draft_pkey" PRIMARY KEY ("pattern_id")
);

-- CreateTable
CREATE TABLE "late_save" (
    "pattern_id" UUID NOT NULL,
    "account_id" UUID NOT NULL,
    "typed" JSONB NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "late_save_pkey" PRIMARY KEY ("pattern_id","account_id")
);

-- CreateTable
CREATE TABLE "call" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "pattern_id" UUID NOT NULL,
    "title" TEXT NOT NULL,
    "status" "call_status" NOT NULL DEFAULT 'open',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "call_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "place" (
    "call_id" UUID NOT NULL,
    "size" TEXT NOT NULL,
    "least" INTEGER NOT NULL,
    "wanted" INTEGER NOT NULL,

    CONSTRAINT "place_pkey" PRIMARY KEY ("call_id","size")
);

-- CreateTable
CREATE TABLE "tester" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "call_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "position" INTEGER NOT NULL,

    CONSTRAINT "tester_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "tester_contact" (
    "tester_id" UUID NOT NULL,
    "name" TEXT NOT NULL,

    CONSTRAINT "tester_contact_pkey" PRIMARY KEY ("tester_id")
);

-- CreateTable
CREATE TABLE "tester_body" (
    "tester_id" UUID NOT NULL,
    "measurements" JSONB NOT NULL,

    CONSTRAINT "tester_body_pkey" PRIMARY KEY ("tester_id")
);

-- CreateTable
CREATE TABLE "report" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "tester_id" UUID NOT NULL,
    "version" INTEGER NOT NULL,
    "revision_id" UUID NOT NULL,
    "document" JSONB NOT NULL,
    "typed" JSONB NOT NULL DEFAULT '{}',
    "submission_key" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "report_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "decision" (
    "report_id" UUID NOT NULL,
    "part" "decision_part" NOT NULL,
    "position" INTEGER NOT NULL,
    "decision" TEXT NOT NULL,

    CONSTRAINT "decision_pkey" PRIMARY KEY ("report_id","part","position")
);

-- CreateTable
CREATE TABLE "analysis" (
    "call_id" UUID NOT NULL,
    "input_hash" TEXT NOT NULL,
    "engine_version" TEXT NOT NULL,
    "output" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "analysis_pkey" PRIMARY KEY ("call_id","input_hash","engine_version")
);

-- CreateTable
CREATE TABLE "rate_limit" (
    "key" TEXT NOT NULL,
    "points" INTEGER NOT NULL DEFAULT 0,
    "expire" BIGINT,

    CONSTRAINT "rate_limit_pkey" PRIMARY KEY ("key")
);

-- CreateIndex
CREATE UNIQUE INDEX "account_email_key" ON "account"("email");

-- CreateIndex
CREATE INDEX "membership_account_id_idx" ON "membership"("account_id");

-- CreateIndex
CREATE UNIQUE INDEX "revision_pattern_id_number_key" ON "revision"("pattern_id", "number");

-- CreateIndex
CREATE INDEX "call_pattern_id_idx" ON "call"("pattern_id");

-- CreateIndex
CREATE UNIQUE INDEX "tester_call_id_code_key" ON "tester"("call_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "tester_call_id_position_key" ON "tester"("call_id", "position");

-- CreateIndex
CREATE UNIQUE INDEX "report_submission_key_key" ON "report"("submission_key");

-- CreateIndex
CREATE INDEX "report_revision_id_idx" ON "report"("revision_id");

-- CreateIndex
CREATE UNIQUE INDEX "report_tester_id_version_key" ON "report"("tester_id", "version");

-- AddForeignKey
ALTER TABLE "membership" ADD CONSTRAINT "membership_pattern_id_fkey" FOREIGN KEY ("pattern_id") REFERENCES "pattern"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "membership" ADD CONSTRAINT "membership_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "revision" ADD CONSTRAINT "revision_pattern_id_fkey" FOREIGN KEY ("pattern_id") REFERENCES "pattern"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "revision" ADD CONSTRAINT "revision_created_by_id_fkey" FOREIGN KEY ("created_by_id") REFERENCES "account"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "draft" ADD CONSTRAINT "draft_pattern_id_fkey" FOREIGN KEY ("pattern_id") REFERENCES "pattern"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "draft" ADD CONSTRAINT "draft_base_id_fkey" FOREIGN KEY ("base_id") REFERENCES "revision"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "draft" ADD CONSTRAINT "draft_updated_by_id_fkey" FOREIGN KEY ("updated_by_id") REFERENCES "account"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "late_save" ADD CONSTRAINT "late_save_pattern_id_fkey" FOREIGN KEY ("pattern_id") REFERENCES "pattern"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "late_save" ADD CONSTRAINT "late_save_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "call" ADD CONSTRAINT "call_pattern_id_fkey" FOREIGN KEY ("pattern_id") REFERENCES "pattern"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "place" ADD CONSTRAINT "place_call_id_fkey" FOREIGN KEY ("call_id") REFERENCES "call"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "tester" ADD CONSTRAINT "tester_call_id_fkey" FOREIGN KEY ("call_id") REFERENCES "call"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "tester_contact" ADD CONSTRAINT "tester_contact_tester_id_fkey" FOREIGN KEY ("tester_id") REFERENCES "tester"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "tester_body" ADD CONSTRAINT "tester_body_tester_id_fkey" FOREIGN KEY ("tester_id") REFERENCES "tester"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "report" ADD CONSTRAINT "report_tester_id_fkey" FOREIGN KEY ("tester_id") REFERENCES "tester"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "report" ADD CONSTRAINT "report_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "decision" ADD CONSTRAINT "decision_report_id_fkey" FOREIGN KEY ("report_id") REFERENCES "report"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "analysis" ADD CONSTRAINT "analysis_call_id_fkey" FOREIGN KEY ("call_id") REFERENCES "call"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- What the schema above cannot say.

ALTER TABLE "account" ADD CONSTRAINT "account_email_small_letters" CHECK ("email" = lower("email") AND "email" <> '');
ALTER TABLE "account" ADD CONSTRAINT "account_unit_known" CHECK ("unit" IN ('cm', 'in'));
ALTER TABLE "account" ADD CONSTRAINT "account_session_version_positive" CHECK ("session_version" > 0);
ALTER TABLE "revision" ADD CONSTRAINT "revision_number_positive" CHECK ("number" > 0);
ALTER TABLE "revision" ADD CONSTRAINT "revision_document_object" CHECK (jsonb_typeof("document") = 'object');
ALTER TABLE "draft" ADD CONSTRAINT "draft_version_positive" CHECK ("version" > 0);
ALTER TABLE "draft" ADD CONSTRAINT "draft_typed_object" CHECK (jsonb_typeof("typed") = 'object');
ALTER TABLE "late_save" ADD CONSTRAINT "late_save_typed_object" CHECK (jsonb_typeof("typed") = 'object');
ALTER TABLE "place" ADD CONSTRAINT "place_least_within_wanted" CHECK ("least" >= 0 AND "least" <= "wanted");
ALTER TABLE "tester" ADD CONSTRAINT "tester_position_not_negative" CHECK ("position" >= 0);
ALTER TABLE "report" ADD CONSTRAINT "report_version_positive" CHECK ("version" > 0);
ALTER TABLE "report" ADD CONSTRAINT "report_document_object" CHECK (jsonb_typeof("document") = 'object');
ALTER TABLE "decision" ADD CONSTRAINT "decision_known" CHECK ("decision" IN ('keep', 'set-aside') AND "position" >= 0);

-- One owner a pattern.
CREATE UNIQUE INDEX "membership_one_owner" ON "membership"("pattern_id") WHERE "role" = 'owner';

CREATE FUNCTION refuse_update() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'a saved % never changes: write the next one', TG_TABLE_NAME USING ERRCODE = 'restrict_violation';
END
$$;

-- A deleted account leaves its revisions behind without a name: the one change that is let through.
CREATE TRIGGER "revision_never_changes" BEFORE UPDATE ON "revision" FOR EACH ROW
  WHEN ((OLD."id", OLD."pattern_id", OLD."number", OLD."document", OLD."reason", OLD."created_at")
        IS DISTINCT FROM (NEW."id", NEW."pattern_id", NEW."number", NEW."document", NEW."reason", NEW."created_at")
        OR NEW."created_by_id" IS NOT NULL)
  EXECUTE FUNCTION refuse_update();

CREATE TRIGGER "report_never_changes" BEFORE UPDATE ON "report" FOR EACH ROW EXECUTE FUNCTION refuse_update();
