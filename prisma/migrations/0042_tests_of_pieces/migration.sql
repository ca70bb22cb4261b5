-- A test may be of some pieces only: its testers make, count and measure no more than those.
ALTER TABLE "call" ADD COLUMN "pieces" text[] DEFAULT ARRAY[]::text[];
