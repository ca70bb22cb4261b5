# Quantiles and chances of Student's t and the normal distribution, as R prints them to 17 figures.
# Rscript test/reference/data/quantiles.R > test/reference/data/quantiles.json
digits <- function(x) formatC(x, digits = 17, format = "g")
t_rows <- unlist(lapply(c(1, 2, 3, 5, 8, 12, 30, 120, 2500), function(df)
  sapply(c(.9, .95, .975, .995, .0005), function(p)
    sprintf('{"probability":%s,"degreesOfFreedom":%s,"quantile":%s}', digits(p), df, digits(qt(p, df))))))
z_rows <- sapply(c(.5, .9, .95, .975, .995, .9999, 1e-6), function(p)
  sprintf('{"probability":%s,"quantile":%s}', digits(p), digits(qnorm(p))))
chance_rows <- sapply(c(-6, -1.5, 0, 0.3, 2, 4), function(x)
  sprintf('{"value":%s,"normal":%s,"t5":%s}', x, digits(pnorm(x)), digits(pt(x, 5))))
cat(sprintf('{"source":"%s","t":[%s],"normal":[%s],"chances":[%s]}\n', R.version.string,
  paste(t_rows, collapse = ","), paste(z_rows, collapse = ","), paste(chance_rows, collapse = ",")))
