-- Testers who are invited again have no application in the new test: they agree when they accept.
ALTER TABLE "tester" ADD COLUMN "agreement_version" integer, ADD COLUMN "agreed_at" timestamptz(3);
ALTER TABLE "tester" ADD CONSTRAINT "tester_call_id_agreement_version_fkey"
  FOREIGN KEY ("call_id", "agreement_version") REFERENCES "agreement" ("call_id", "version")
  ON DELETE NO ACTION ON UPDATE CASCADE DEFERRABLE INITIALLY DEFERRED;
CREATE INDEX "tester_call_id_agreement_version_idx" ON "tester" ("call_id", "agreement_version");
