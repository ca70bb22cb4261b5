-- Which numbers a tester's text shows: those of all sizes, as they will be published, or of their own size only.
CREATE TYPE "sizes_shown" AS ENUM ('all', 'own');
ALTER TABLE "tester" ADD COLUMN "sizes_shown" "sizes_shown" NOT NULL DEFAULT 'all';
