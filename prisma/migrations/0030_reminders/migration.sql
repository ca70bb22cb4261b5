-- Reminders that were written: one a tester, kind and date that it is about, so that a moved date leads to a new one.
CREATE TABLE "reminder" (
  "tester_id" uuid NOT NULL REFERENCES "tester" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "kind" text NOT NULL,
  "about" timestamptz(3) NOT NULL,
  "written_at" timestamptz(3) NOT NULL,
  PRIMARY KEY ("tester_id", "kind", "about")
);
