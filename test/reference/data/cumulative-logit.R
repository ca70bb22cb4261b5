# Cumulative logits of two published data sets: MASS::polr without, ordinal::clmm with an effect of each person.
# Rscript test/reference/data/cumulative-logit.R > test/reference/data/cumulative-logit.json
# housing: satisfaction of 1681 tenants in Copenhagen (Madsen 1976; Venables and Ripley 2002, 7.3).
# wine: bitterness of wine, 9 judges (Randall 1989; Christensen, vignette of the package ordinal).
suppressMessages({ library(MASS); library(ordinal) })
digits <- function(x) formatC(as.numeric(x), digits = 12, format = "g")
list_of <- function(x) paste0("[", paste(digits(x), collapse = ","), "]")
named <- function(...) { parts <- c(...); paste0("{", paste(sprintf('"%s":%s', names(parts), parts), collapse = ","), "}") }
whole <- function(x) paste0("[", paste(as.integer(x), collapse = ","), "]")

house <- polr(Sat ~ Infl + Type + Cont, weights = Freq, data = housing, Hess = TRUE, control = list(reltol = 1e-15))
columns <- model.matrix(~ Infl + Type + Cont, housing)[, -1]
house_row <- named(answers = whole(as.integer(housing$Sat) - 1), frequencies = whole(housing$Freq),
  columns = whole(t(columns)), width = ncol(columns), thresholds = list_of(house$zeta), weights = list_of(coef(house)),
  weightErrors = list_of(sqrt(diag(vcov(house)))[seq_along(coef(house))]), logLikelihood = digits(logLik(house)))

strict <- list(gradTol = 1e-9)
flexible <- function(points) {
  fit <- clmm(rating ~ temp + contact + (1 | judge), data = wine, nAGQ = points, control = do.call(clmm.control, strict))
  named(thresholds = list_of(fit$alpha), weights = list_of(fit$beta), personSd = digits(fit$ST[[1]][1, 1]),
    errors = list_of(sqrt(diag(vcov(fit)))), logLikelihood = digits(logLik(fit)))
}
symmetric <- clmm(rating ~ temp + contact + (1 | judge), data = wine, nAGQ = 15, threshold = "symmetric",
  control = do.call(clmm.control, strict))
wine_row <- named(answers = whole(as.integer(wine$rating) - 1), judges = whole(wine$judge),
  columns = whole(rbind(wine$temp == "warm", wine$contact == "yes")), quadrature = flexible(15),
  symmetric = named(thresholds = list_of(symmetric$Theta), weights = list_of(symmetric$beta),
    personSd = digits(symmetric$ST[[1]][1, 1]), logLikelihood = digits(logLik(symmetric))))
cat(sprintf('{"source":"%s, MASS %s, ordinal %s","housing":%s,"wine":%s}\n', R.version.string,
  packageVersion("MASS"), packageVersion("ordinal"), house_row, wine_row))
