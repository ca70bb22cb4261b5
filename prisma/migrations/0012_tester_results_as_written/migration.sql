-- What a row of these holds is written and read whole, and nothing in it is searched: kept as the text that the engine
-- wrote, PostgreSQL need not read a million digits to store it, nor write them again for each page.
ALTER TABLE "analysis_tester"
  ALTER COLUMN "comparisons" TYPE json,
  ALTER COLUMN "swatches" TYPE json,
  ALTER COLUMN "readings" TYPE json,
  ALTER COLUMN "yarn" TYPE json;
