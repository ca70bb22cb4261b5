-- The most testers that a size may have: the ceiling for what designers do by hand and for invitations. Sizes are still assigned up to those wanted.
ALTER TABLE "place" ADD COLUMN "most" INTEGER;
UPDATE "place" SET "most" = greatest("wanted", 3);
ALTER TABLE "place" ALTER COLUMN "most" SET NOT NULL;
ALTER TABLE "place" ADD CONSTRAINT "place_wanted_within_most" CHECK ("least" <= "wanted" AND "wanted" <= "most");
