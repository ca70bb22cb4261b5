-- A revision that its designer has published. Corrections after the first are errata.
CREATE TABLE "published_version" (
  "id" uuid PRIMARY KEY DEFAULT gen_random_uuid(),
  "revision_id" uuid NOT NULL REFERENCES "revision" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "label" text NOT NULL,
  "published_at" timestamptz(3) NOT NULL,
  "created_at" timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP
);
CREATE UNIQUE INDEX "published_version_revision_id_key" ON "published_version" ("revision_id");
