import type { ScriptedFit, ScriptedLaw } from './scriptedFit.ts'
import { inQuotes, listed, nearby } from './scriptText.ts'

const springs: Readonly<Record<ScriptedLaw, readonly [plate: string, roller: string]>> = {
  linear: [
    'under_plate <- function(pressure, n) n$softness * pressure / P_R',
    `# load = B(1/2, 2) P_R z/s sqrt(D z) times the length that bears
under_roller <- function(load, diameter, bearing, n)
  (load * n$softness / (beta(0.5, 2) * P_R * bearing * sqrt(diameter)))^(2 / 3)`,
  ],
  power: [
    'under_plate <- function(pressure, n) n$softness * (pressure / P_R)^(1 / n$exponent)',
    `# load = B(1/2, n + 1) P_R (z/s)^n sqrt(D z) times the length that bears
under_roller <- function(load, diameter, bearing, n) {
  whole <- beta(0.5, n$exponent + 1) * P_R * bearing * sqrt(diameter) / n$softness^n$exponent
  (load / whole)^(1 / (n$exponent + 0.5))
}`,
  ],
  stiffening: [
    `under_plate <- function(pressure, n) {
  k <- P_R * (1 - n$softness / n$lockingDepth) / n$softness
  pressure / (k + pressure / n$lockingDepth)
}`,
    `# of springs p = k z/(1 - z/H) under a parabola
line_load <- function(z, diameter, softness, H) {
  k <- P_R * (1 - softness / H) / softness
  x <- sqrt(z / H / (1 - z / H))
  2 * k * H * sqrt(diameter * z) * (atan(x) / (x * (1 - z / H)) - 1)
}`,
  ],
  logarithmic: [
    `under_plate <- function(pressure, n) {
  m <- -P_R / log1p(-n$softness / n$lockingDepth)
  -n$lockingDepth * expm1(-pressure / m)
}`,
    `# of springs p = -M ln(1 - z/H) under a parabola
line_load <- function(z, diameter, softness, H) {
  m <- -P_R / log1p(-softness / H)
  x <- sqrt(z / (H - z))
  4 * m * sqrt(diameter * z) * (1 - atan(x) / x)
}`,
  ],
}

const searched = `
under_roller <- function(load, diameter, bearing, n)
  mapply(function(load, diameter, bearing, s, H) {
    miss <- function(z) log(bearing * line_load(z, diameter, s, H) / load)
    H * uniroot(function(part) miss(H * part), c(1e-9, 1 - 1e-9), tol = 1e-15, maxiter = 10000)$root
  }, load, diameter, bearing, n$softness, n$lockingDepth)`

const spreading = `# a round plate on linear springs carries 1 + 2 (l/a) K1(a/l)/K0(a/l) times what its area alone would
under_plate <- function(pressure, n) {
  x <- sqrt(area / pi) / abs(n$spread)
  more <- ifelse(n$spread == 0, 0, 2 * besselK(x, 1, TRUE) / besselK(x, 0, TRUE) / x)
  n$softness * pressure / P_R / (1 + more)
}`

/** The same fit with what R brings itself. */
export function rScript(scripted: ScriptedFit, title: readonly string[]): string {
  const { law, spreads, rows, parameters, noise, level } = scripted
  const locks = law === 'stiffening' || law === 'logarithmic'
  const rollers = rows.some(({ foot }) => foot.kind === 'roller')
  const plates = rows.some(({ foot }) => foot.kind === 'plate')
  const [plate, roller] = springs[law]
  const column = (name: string, values: readonly (number | string)[]) =>
    `${name} <- c(\n${listed(values.map(String), '  ')}\n)`
  const text = [
    ...(spreads ? [spreading] : plates ? [plate] : []),
    ...(rollers ? [`${roller}${locks ? searched : ''}`] : []),
  ]
  return `${title.map(line => `# ${line}`.trimEnd()).join('\n')}
# SI throughout. Needs R 4.1 or newer, and nothing else.
P_R <- 10e3 # reference pressure: softness is the sinkage of a wide plate under it
LEVEL <- ${level}

${column(
  'sets',
  rows.map(({ set }) => inQuotes(set)),
)}
${column(
  'load',
  rows.map(({ load }) => load),
)}
${column(
  'measured',
  rows.map(({ measured }) => measured),
)}
# ${noise === 'known' ? '1/variance of each reading' : 'relative to a single reading'}
${column(
  'weight',
  rows.map(({ weight }) => weight),
)}
${
  plates
    ? `# of plates, 0 for rollers
${column(
  'area',
  rows.map(({ foot }) => (foot.kind === 'plate' ? foot.area : 0)),
)}
`
    : ''
}${
  rollers
    ? `# of rollers, 0 for plates; the length that bears is that of the lands
${column(
  'diameter',
  rows.map(({ foot }) => (foot.kind === 'roller' ? foot.diameter : 0)),
)}
${column(
  'bearing',
  rows.map(({ foot }) => (foot.kind === 'roller' ? foot.bearing : 0)),
)}
`
    : ''
}
# set NA: shared by all; by: solved for in its logarithm, in mm, or held; value: where it starts, SI
numbers <- data.frame(
  name = c(${parameters.map(({ name }) => `"${name}"`).join(', ')}),
  set = c(${parameters.map(({ set }) => (set === null ? 'NA_character_' : inQuotes(set))).join(', ')}),
  by = c(${parameters.map(({ by }) => `"${by}"`).join(', ')}),
  value = c(${parameters.map(({ by, value }) => (by === 'held' ? value : nearby(value))).join(', ')})
)
free <- which(numbers$by != "held")
logged <- numbers$by[free] == "ln"
si <- function(theta) ifelse(logged, exp(theta), 1e-3 * theta)

# every number for every reading: that of its set, or the one that all share
of_rows <- function(theta) {
  values <- numbers$value
  values[free] <- si(theta)
  out <- list()
  for (k in seq_along(values)) {
    name <- numbers$name[k]
    if (is.null(out[[name]])) out[[name]] <- numeric(length(load))
    its <- is.na(numbers$set[k]) | sets == numbers$set[k]
    out[[name]][its] <- values[k]
  }
  out
}

${text.join('\n\n')}

model <- function(theta) {
  n <- of_rows(theta)
  z <- numeric(length(load))
${plates ? `  flat <- area > 0\n  z[flat] <- under_plate(load[flat] / area[flat], lapply(n, function(values) values[flat]))\n` : ''}${
  rollers
    ? `  curved <- diameter > 0
  z[curved] <- under_roller(load[curved], diameter[curved], bearing[curved], lapply(n, function(values) values[curved]))
`
    : ''
}  if (is.null(n$datum)) z else z + n$datum
}

start <- ifelse(logged, log(pmax(numbers$value[free], 1e-300)), 1e3 * numbers$value[free])
solved <- nls(measured ~ model(theta),
  start = list(theta = start), weights = weight,
  control = nls.control(maxiter = 500, tol = 1e-7, minFactor = 1e-9, nDcentral = TRUE, warnOnly = TRUE)
)
freedom <- length(load) - length(free)
sum_of_squares <- sum(weight * (measured - predict(solved))^2)
variance <- ${noise === 'known' ? '1' : 'sum_of_squares / freedom'}
deviation <- sqrt(variance * diag(as.matrix(summary(solved)$cov.unscaled)))
reach <- ${noise === 'known' ? 'qnorm((1 + LEVEL) / 2)' : 'qt((1 + LEVEL) / 2, freedom)'}
theta <- coef(solved)
number <- function(x) formatC(x, digits = 10, format = "g")
writeLines("parameter,set,value,standard_error,low,high")
writeLines(paste(
  numbers$name[free], ifelse(is.na(numbers$set[free]), "", encodeString(numbers$set[free], quote = "'")),
  number(si(theta)), number(ifelse(logged, exp(theta), 1e-3) * deviation),
  number(si(theta - reach * deviation)), number(si(theta + reach * deviation)),
  sep = ","
))
writeLines(sprintf("# residual standard deviation %.10g, %d degrees of freedom", sqrt(sum_of_squares / freedom), freedom))
`
}
