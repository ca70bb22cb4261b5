-- An archived pattern has left its people's lists. It can still be read, and be brought back.
ALTER TABLE "pattern" ADD COLUMN "archived_at" timestamptz(3);
