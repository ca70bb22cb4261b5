-- A closed call that its designer has put away. It stays readable, and nothing is sent for it any more.
ALTER TABLE "call" ADD COLUMN "archived_at" timestamptz(3);
ALTER TABLE "call" ADD CONSTRAINT "call_archived_is_closed" CHECK ("archived_at" IS NULL OR "status" = 'closed');

-- Whoever would write to somebody about an archived call writes nothing.
CREATE FUNCTION drop_messages_of_archived_calls() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT FROM "call" WHERE "call"."id" = NEW."call_id" AND "call"."archived_at" IS NOT NULL) THEN
    RETURN NULL;
  END IF;
  RETURN NEW;
END
$$;

CREATE TRIGGER "message_not_of_archived_call" BEFORE INSERT ON "message"
  FOR EACH ROW WHEN (NEW."call_id" IS NOT NULL) EXECUTE FUNCTION drop_messages_of_archived_calls();

-- From when on an agreement lets testers show photos; null where only its text says so.
CREATE TYPE "photo_sharing" AS ENUM ('never', 'release', 'any');
ALTER TABLE "agreement" ADD COLUMN "progress_photos" "photo_sharing", ADD COLUMN "finished_photos" "photo_sharing";
