-- A revision that its designer has published. Corrections after the first are errata.
CREATE TABLE "published_version" (
  "id" uuid PRIMARY KEY DEFAULT gen_random_uuid(),
  "revision_id" uuid NOT NULL REFERENCES "revision" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "label" text NOT NULL,
  "published_at" timestamptz(3) NOT NULL,
  "created_at" timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP
);
CREATE UNIQUE INDEX "published_version_revision_id_key" ON "published_version" ("revision_id");

-- A test of a later revision, after another test of the same pattern.
ALTER TABLE "call" ADD COLUMN "follows_id" uuid REFERENCES "call" ("id") ON DELETE SET NULL ON UPDATE CASCADE;
CREATE INDEX "call_follows_id_idx" ON "call" ("follows_id");

-- They make the garment for a child; it stays known when they are invited again.
ALTER TABLE "tester" ADD COLUMN "is_worn_by_child" boolean NOT NULL DEFAULT false;
