-- What testers get for their work, and how they would like to be named.
CREATE TABLE "reward" (
  "tester_id" uuid PRIMARY KEY REFERENCES "tester" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
  "pattern_sent_at" timestamptz(3),
  "named_at" timestamptz(3),
  "payment" text NOT NULL DEFAULT ''
);

ALTER TABLE "tester_contact" ADD COLUMN "credit_name" text;
