-- A tester's photo that the designer shows on the pattern's public page, while the tester allows it.
ALTER TABLE "photo" ADD COLUMN "shown_since" timestamptz(3);
