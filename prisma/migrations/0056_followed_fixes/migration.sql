-- A number of the written instructions that a saved plan found wrong: to be put right in the text.
CREATE TABLE "instruction_fix" (
  "id" uuid PRIMARY KEY DEFAULT gen_random_uuid(),
  "revision_id" uuid NOT NULL REFERENCES "revision" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "size" text NOT NULL,
  "count" text NOT NULL,
  "was" integer NOT NULL,
  "becomes" integer NOT NULL,
  "places" jsonb NOT NULL DEFAULT '[]',
  "done_at" timestamptz(3),
  "done_by_id" uuid REFERENCES "account" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);
CREATE UNIQUE INDEX "instruction_fix_revision_id_size_count_key" ON "instruction_fix" ("revision_id", "size", "count");
CREATE INDEX "instruction_fix_done_by_id_idx" ON "instruction_fix" ("done_by_id");

-- A size that a revision has worked otherwise than before: to be tested again, or signed off by name.
CREATE TABLE "corrected_size" (
  "revision_id" uuid NOT NULL REFERENCES "revision" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "size" text NOT NULL,
  "measurements" text[],
  "checked_by" text,
  "checked_at" timestamptz(3),
  "checked_by_id" uuid REFERENCES "account" ("id") ON DELETE SET NULL ON UPDATE CASCADE,
  PRIMARY KEY ("revision_id", "size"),
  -- Signed by name and date, or not at all.
  CHECK (("checked_by" IS NULL) = ("checked_at" IS NULL))
);
CREATE INDEX "corrected_size_checked_by_id_idx" ON "corrected_size" ("checked_by_id");
