-- A designer opens the spot of a tester of whom nothing is heard: the tester stops, and this says that the designer did it.
ALTER TABLE "tester" ADD COLUMN "freed_at" TIMESTAMPTZ(3);
ALTER TABLE "tester" ADD CONSTRAINT "tester_freed_has_stopped" CHECK ("freed_at" IS NULL OR "stopped_at" IS NOT NULL);
