-- Results are replaced at every report and read at every page: PostgreSQL spends more on compressing and unpacking them
-- than the room is worth.
ALTER TABLE "analysis"
  ALTER COLUMN "differences" SET STORAGE EXTERNAL,
  ALTER COLUMN "gauges" SET STORAGE EXTERNAL,
  ALTER COLUMN "flagged" SET STORAGE EXTERNAL,
  ALTER COLUMN "yarn" SET STORAGE EXTERNAL,
  ALTER COLUMN "method" SET STORAGE EXTERNAL;
ALTER TABLE "analysis_tester"
  ALTER COLUMN "comparisons" SET STORAGE EXTERNAL,
  ALTER COLUMN "swatches" SET STORAGE EXTERNAL,
  ALTER COLUMN "readings" SET STORAGE EXTERNAL,
  ALTER COLUMN "yarn" SET STORAGE EXTERNAL;
