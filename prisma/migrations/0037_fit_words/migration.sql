-- Reports in which somebody wrote about the fit, so that the page of the fit opens no other.
CREATE INDEX "report_with_fit_words" ON "report" ("tester_id") WHERE jsonb_path_exists("document", '$.fit[*].says');
