-- The trouble spot that a tester's photo of a problem shows; null for none. The photo outlives it.
ALTER TABLE "photo" ADD COLUMN "trouble_id" uuid REFERENCES "trouble_spot" ("id") ON DELETE SET NULL ON UPDATE CASCADE;
ALTER TABLE "photo" ADD CONSTRAINT "photo_of_trouble_is_a_problem"
  CHECK ("trouble_id" IS NULL OR ("view" = 'problem' AND "tester_id" IS NOT NULL));
CREATE INDEX "photo_trouble_id_idx" ON "photo" ("trouble_id");
