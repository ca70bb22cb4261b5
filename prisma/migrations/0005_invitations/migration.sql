-- Since when somebody has a part in a pattern; its owner has had it from the first.
ALTER TABLE "membership" ADD COLUMN "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP;
UPDATE "membership" SET "created_at" = "pattern"."created_at" FROM "pattern"
  WHERE "pattern"."id" = "membership"."pattern_id" AND "membership"."role" = 'owner';

-- CreateTable
CREATE TABLE "invitation" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "pattern_id" UUID NOT NULL,
    "role" "role" NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "token_hash" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "ends_at" TIMESTAMPTZ(3) NOT NULL,
    "withdrawn_at" TIMESTAMPTZ(3),
    "accepted_at" TIMESTAMPTZ(3),
    "accepted_by_id" UUID,

    CONSTRAINT "invitation_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "invitation_token_hash_key" ON "invitation"("token_hash");

-- CreateIndex
CREATE INDEX "invitation_pattern_id_idx" ON "invitation"("pattern_id");

-- AddForeignKey
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_pattern_id_fkey" FOREIGN KEY ("pattern_id") REFERENCES "pattern"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_accepted_by_id_fkey" FOREIGN KEY ("accepted_by_id") REFERENCES "account"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- What the schema above cannot say.

ALTER TABLE "invitation" ADD CONSTRAINT "invitation_of_a_helper" CHECK ("role" <> 'owner');
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_token_hash_sha256" CHECK ("token_hash" ~ '^[0-9a-f]{64}$');
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_ends_later" CHECK ("ends_at" > "created_at");
-- Taken or withdrawn, never both, and by nobody before it is taken.
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_one_end" CHECK ("accepted_at" IS NULL OR "withdrawn_at" IS NULL);
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_taken_by_somebody" CHECK ("accepted_by_id" IS NULL OR "accepted_at" IS NOT NULL);
