-- Photos of testers: rows here, files in the photo store.
CREATE TYPE "photo_view" AS ENUM ('swatch', 'front', 'back', 'side', 'problem');
CREATE TYPE "photo_state" AS ENUM ('received', 'ready', 'failed');
CREATE TYPE "photo_use" AS ENUM ('pattern_page', 'social_media');

CREATE TABLE "photo" (
  "id" uuid PRIMARY KEY,
  "tester_id" uuid NOT NULL REFERENCES "tester" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "view" "photo_view" NOT NULL,
  "note" text NOT NULL DEFAULT '',
  "state" "photo_state" NOT NULL DEFAULT 'received',
  "reason" text,
  "width" integer,
  "height" integer,
  "bytes" integer NOT NULL,
  "created_at" timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  -- Only what could not be made ready says why.
  CONSTRAINT "photo_reason_of_failure" CHECK (("state" = 'failed') = ("reason" IS NOT NULL))
);
CREATE INDEX "photo_tester_id_idx" ON "photo" ("tester_id");
CREATE INDEX "photo_state_idx" ON "photo" ("state");

CREATE TABLE "photo_consent" (
  "tester_id" uuid NOT NULL REFERENCES "tester" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "use" "photo_use" NOT NULL,
  "given_at" timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  PRIMARY KEY ("tester_id", "use")
);

CREATE TABLE "photo_withdrawal" (
  "id" uuid PRIMARY KEY DEFAULT gen_random_uuid(),
  "call_id" uuid NOT NULL REFERENCES "call" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "tester_id" uuid REFERENCES "tester" ("id") ON DELETE SET NULL ON UPDATE CASCADE,
  "use" "photo_use" NOT NULL,
  "withdrawn_at" timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  "done_at" timestamptz(3)
);
CREATE INDEX "photo_withdrawal_call_id_idx" ON "photo_withdrawal" ("call_id");
CREATE INDEX "photo_withdrawal_tester_id_idx" ON "photo_withdrawal" ("tester_id");

-- Whose files are still to be deleted. However a photo's row goes, its files go after it.
CREATE TABLE "deleted_photo" (
  "id" uuid PRIMARY KEY,
  "deleted_at" timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP
);

CREATE FUNCTION note_deleted_photos() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO "deleted_photo" ("id") SELECT "id" FROM "gone" ON CONFLICT DO NOTHING;
  RETURN NULL;
END
$$;

CREATE TRIGGER "photo_leaves_files" AFTER DELETE ON "photo"
  REFERENCING OLD TABLE AS "gone" FOR EACH STATEMENT EXECUTE FUNCTION note_deleted_photos();
CREATE TRIGGER "photo_announces_work" AFTER INSERT ON "photo"
  FOR EACH STATEMENT EXECUTE FUNCTION announce_work();
CREATE TRIGGER "deleted_photo_announces_work" AFTER INSERT ON "deleted_photo"
  FOR EACH STATEMENT EXECUTE FUNCTION announce_work();
