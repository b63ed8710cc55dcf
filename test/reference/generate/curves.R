# What R says of fitted curves: nls on its Puromycin (treated cells; Treloar 1974), plain and weighted.
#
#   Rscript curves.R     writes curves.csv
#
# Nothing of it came from Swardsink.
cells <- Puromycin[Puromycin$state == "treated", ]
curve <- deriv(~ Vm * conc / (K + conc), c("Vm", "K"), function(conc, Vm, K) NULL)
rows <- NULL
for (weights in c("equal", "1/rate")) {
  w <- if (weights == "equal") rep(1, nrow(cells)) else 1 / cells$rate
  fit <- nls(rate ~ curve(conc, Vm, K), cells, start = list(Vm = 212, K = 0.064), weights = w,
    control = nls.control(tol = 1e-7, minFactor = 1e-9))
  k <- 3
  n <- nrow(cells)
  aicc <- AIC(fit) + 2 * k * (k + 1) / (n - k - 1)
  table <- coef(summary(fit))
  reach <- qt(0.95, df.residual(fit))
  for (name in c("Vm", "K"))
    rows <- rbind(rows, data.frame(weights = weights, parameter = name, value = table[name, 1], error = table[name, 2],
      low = table[name, 1] - reach * table[name, 2], high = table[name, 1] + reach * table[name, 2],
      correlation = summary(fit, correlation = TRUE)$correlation[1, 2], sigma = sigma(fit), aicc = aicc))
}
for (column in names(rows)[-(1:2)]) rows[[column]] <- trimws(formatC(rows[[column]], digits = 15, format = "g"))
write.csv(rows, "curves.csv", row.names = FALSE, quote = FALSE)
