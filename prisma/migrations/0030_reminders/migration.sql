-- How often somebody gets reminders, and where it is morning for them.
CREATE TYPE "reminder_choice" AS ENUM ('all', 'weekly', 'none');
ALTER TABLE "account"
  ADD COLUMN "time_zone" text,
  ADD COLUMN "reminders" "reminder_choice" NOT NULL DEFAULT 'all',
  ADD COLUMN "daily_summary" boolean NOT NULL DEFAULT true,
  ADD COLUMN "summary_at" timestamptz(3);
ALTER TABLE "tester" ADD COLUMN "reminders" "reminder_choice" NOT NULL DEFAULT 'all';

-- Reminders that were written: one a tester, kind and date that it is about, so that a moved date leads to a new one.
CREATE TABLE "reminder" (
  "tester_id" uuid NOT NULL REFERENCES "tester" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "kind" text NOT NULL,
  "about" timestamptz(3) NOT NULL,
  "written_at" timestamptz(3) NOT NULL,
  PRIMARY KEY ("tester_id", "kind", "about")
);

-- What designers changed in a kind of mail to their testers; kinds without a row are sent in Sizewright's words.
CREATE TABLE "call_message" (
  "call_id" uuid NOT NULL REFERENCES "call" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "kind" text NOT NULL,
  "is_off" boolean NOT NULL DEFAULT false,
  "note" text NOT NULL DEFAULT '',
  "subject" text,
  "text" text,
  "version" integer NOT NULL DEFAULT 1,
  PRIMARY KEY ("call_id", "kind"),
  -- Own words are both.
  CONSTRAINT "call_message_own_words" CHECK (("subject" IS NULL) = ("text" IS NULL))
);
