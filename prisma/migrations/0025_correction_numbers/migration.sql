-- A correction names every passage that it concerns, and the numbers that it changes, size by size.
ALTER TABLE "correction"
  ADD COLUMN "more_places" JSONB NOT NULL DEFAULT '[]',
  ADD COLUMN "numbers" JSONB NOT NULL DEFAULT '[]';
