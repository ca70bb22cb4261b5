-- A photo is a tester's, or of the sample that the designer made of a pattern.
ALTER TABLE "photo" ALTER COLUMN "tester_id" DROP NOT NULL;
ALTER TABLE "photo" ADD COLUMN "pattern_id" uuid REFERENCES "pattern" ("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "photo" ADD COLUMN "main_since" timestamptz(3);
ALTER TABLE "photo" ADD CONSTRAINT "photo_belongs_to_one" CHECK (("tester_id" IS NULL) <> ("pattern_id" IS NULL));
CREATE INDEX "photo_pattern_id_idx" ON "photo" ("pattern_id");

-- Of the one photo that a tester deleted; null where all their photos are meant.
ALTER TABLE "photo_withdrawal" ADD COLUMN "view" "photo_view";
