-- A test of a later revision, after another test of the same pattern.
ALTER TABLE "call" ADD COLUMN "follows_id" uuid REFERENCES "call" ("id") ON DELETE SET NULL ON UPDATE CASCADE;
CREATE INDEX "call_follows_id_idx" ON "call" ("follows_id");

-- They make the garment for a child; it stays known when they are invited again.
ALTER TABLE "tester" ADD COLUMN "is_worn_by_child" boolean NOT NULL DEFAULT false;
UPDATE "tester" SET "is_worn_by_child" = true FROM "application"
WHERE "application"."id" = "tester"."application_id" AND "application"."document" ->> 'wearer' = 'child';
