-- Who made no swatch that counts stands with the gauges of the whole call; every analysis is calculated again anyway.
ALTER TABLE analysis_tester DROP COLUMN without_swatch;
