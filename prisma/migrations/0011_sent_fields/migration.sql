-- AlterTable
ALTER TABLE "report_draft" ADD COLUMN     "sent" JSONB;

-- A draft that was not touched after its newest version was sent is what was sent.
UPDATE "report_draft" SET "sent" = "typed"
 WHERE "updated_at" <= (SELECT max("created_at") FROM "report" WHERE "report"."tester_id" = "report_draft"."tester_id");
