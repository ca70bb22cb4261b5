-- RFC 5545: an event's SEQUENCE rises when its date moves or it is cancelled. It is the sum of these and of the listing's
-- version, none of which ever falls.
ALTER TABLE "tester" ADD COLUMN "dates_version" integer NOT NULL DEFAULT 0;
ALTER TABLE "call" ADD COLUMN "status_version" integer NOT NULL DEFAULT 0;

CREATE FUNCTION raise_dates_version() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  NEW."dates_version" := OLD."dates_version" + 1;
  RETURN NEW;
END
$$;

CREATE TRIGGER "tester_raises_dates_version" BEFORE UPDATE ON "tester" FOR EACH ROW
  WHEN ((OLD."dates", OLD."time_zone", OLD."stopped_at") IS DISTINCT FROM (NEW."dates", NEW."time_zone", NEW."stopped_at"))
  EXECUTE FUNCTION raise_dates_version();

CREATE FUNCTION raise_status_version() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  NEW."status_version" := OLD."status_version" + 1;
  RETURN NEW;
END
$$;

CREATE TRIGGER "call_raises_status_version" BEFORE UPDATE ON "call" FOR EACH ROW
  WHEN (OLD."status" IS DISTINCT FROM NEW."status")
  EXECUTE FUNCTION raise_status_version();
