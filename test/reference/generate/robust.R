# Robust regressions of R's stackloss (Brownlee 1965) by MASS's rlm, run to the last digit.
#
#   Rscript robust.R     writes robust.csv
#
# `plain` is lm. Nothing of it came from Swardsink.
library(MASS)

rows <- NULL
keep <- function(loss, fit, spread) {
  table <- summary(fit)$coefficients
  rows <<- rbind(rows, data.frame(loss = loss, term = c("b0", "air", "water", "acid"),
    value = table[, 1], error = table[, 2], spread = spread))
}
plain <- lm(stack.loss ~ ., stackloss)
keep("squares", plain, summary(plain)$sigma)
huber <- rlm(stack.loss ~ ., stackloss, psi = psi.huber, k = 1.345, acc = 1e-13, maxit = 2000)
keep("huber", huber, huber$s)
# from the answer that Huber's weights give
bisquare <- rlm(stack.loss ~ ., stackloss, psi = psi.bisquare, c = 4.685, init = coef(huber), acc = 1e-13, maxit = 2000)
keep("bisquare", bisquare, bisquare$s)
rows$value <- trimws(formatC(rows$value, digits = 15, format = "g"))
rows$error <- trimws(formatC(rows$error, digits = 15, format = "g"))
rows$spread <- trimws(formatC(rows$spread, digits = 15, format = "g"))
write.csv(rows, "robust.csv", row.names = FALSE, quote = FALSE)
