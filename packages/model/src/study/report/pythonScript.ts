import type { ScriptedFit, ScriptedLaw } from './scriptedFit.ts'
import { inQuotes, listed, nearby } from './scriptText.ts'

const springs: Readonly<Record<ScriptedLaw, string>> = {
  linear: `def under_plate(pressure, softness):
    return softness * pressure / P_R


def under_roller(load, diameter, bearing, softness):
    """load = B(1/2, 2) P_R z/s sqrt(D z) times the length that bears."""
    return (load * softness / (beta(0.5, 2) * P_R * bearing * np.sqrt(diameter))) ** (2 / 3)`,
  power: `def under_plate(pressure, softness, exponent):
    return softness * (pressure / P_R) ** (1 / exponent)


def under_roller(load, diameter, bearing, softness, exponent):
    """load = B(1/2, n + 1) P_R (z/s)^n sqrt(D z) times the length that bears."""
    whole = beta(0.5, exponent + 1) * P_R * bearing * np.sqrt(diameter) / softness**exponent
    return (load / whole) ** (1 / (exponent + 0.5))`,
  stiffening: `def under_plate(pressure, softness, lockingDepth):
    k = P_R * (1 - softness / lockingDepth) / softness
    return pressure / (k + pressure / lockingDepth)


def line_load(z, diameter, softness, lockingDepth):
    """2 k H (a/x atan(x) - a), x^2 = (z/H)/(1 - z/H), of springs p = k z/(1 - z/H) under a parabola."""
    k = P_R * (1 - softness / lockingDepth) / softness
    a = np.sqrt(diameter * z)
    q2 = 1 - z / lockingDepth
    x = np.sqrt(z / lockingDepth / q2)
    return 2 * k * lockingDepth * a * (np.arctan(x) / (x * q2) - 1)`,
  logarithmic: `def under_plate(pressure, softness, lockingDepth):
    m = -P_R / np.log1p(-softness / lockingDepth)
    return -lockingDepth * np.expm1(-pressure / m)


def line_load(z, diameter, softness, lockingDepth):
    """4 M a (1 - atan(x)/x), x^2 = (z/H)/(1 - z/H), of springs p = -M ln(1 - z/H) under a parabola."""
    m = -P_R / np.log1p(-softness / lockingDepth)
    a = np.sqrt(diameter * z)
    x = np.sqrt(z / (lockingDepth - z))
    return 4 * m * a * (1 - np.arctan(x) / x)`,
}

const searched = `

@np.vectorize
def under_roller(load, diameter, bearing, softness, lockingDepth):
    def miss(z):
        return bearing * line_load(z, diameter, softness, lockingDepth) - load

    return brentq(miss, 1e-9 * lockingDepth, (1 - 1e-9) * lockingDepth, xtol=1e-18, rtol=1e-15)`

const spreading = `def under_plate_with_spread(load, area, softness, spread):
    """A round plate on linear springs carries 1 + 2 (l/a) K1(a/l)/K0(a/l) times what its area alone would."""
    if np.all(spread == 0):
        return softness * load / area / P_R
    x = np.sqrt(area / np.pi) / np.abs(spread)
    return softness * load / area / P_R / (1 + 2 * kve(1, x) / kve(0, x) / x)`

/** The same fit with scipy. */
export function pythonScript(scripted: ScriptedFit, title: readonly string[]): string {
  const { law, spreads, rows, parameters, noise, level } = scripted
  const locks = law === 'stiffening' || law === 'logarithmic'
  const rollers = rows.some(({ foot }) => foot.kind === 'roller')
  const plates = rows.some(({ foot }) => foot.kind === 'plate')
  const names = [...new Set(parameters.map(({ name }) => name))].filter(
    name => name !== 'datum' && name !== 'spread',
  )
  const numbers = names.map(name => `${name}=of_rows(theta, "${name}")`).join(', ')
  const special = [...(spreads ? ['kve'] : rollers && !locks ? ['beta'] : [])]
  const column = (name: string, values: readonly (number | string)[]) =>
    `${name} = np.array([\n${listed(values.map(String), '    ')}\n])`
  const springText = rollers ? `${springs[law]}${locks ? searched : ''}` : springs[law].split('\n\n\n')[0]!
  const model = spreads
    ? `    return under_plate_with_spread(load, area, of_rows(theta, "softness"), of_rows(theta, "spread"))`
    : [
        `    numbers = dict(${numbers})`,
        '    z = np.empty(len(load))',
        ...(plates
          ? [
              '    flat = area > 0',
              '    at = {name: values[flat] for name, values in numbers.items()}',
              '    z[flat] = under_plate(load[flat] / area[flat], **at)',
            ]
          : []),
        ...(rollers
          ? [
              '    round_ = diameter > 0',
              '    at = {name: values[round_] for name, values in numbers.items()}',
              '    z[round_] = under_roller(load[round_], diameter[round_], bearing[round_], **at)',
            ]
          : []),
        '    return z',
      ].join('\n')
  return `${title.map(line => `# ${line}`.trimEnd()).join('\n')}
# SI throughout. Needs numpy and scipy.
import numpy as np
from scipy.optimize import ${rollers && locks ? 'brentq, ' : ''}least_squares
${special.length > 0 ? `from scipy.special import ${special.join(', ')}\n` : ''}from scipy.stats import ${noise === 'known' ? 'norm' : 't'}

P_R = 10e3  # reference pressure: softness is the sinkage of a wide plate under it
LEVEL = ${level}

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
# how a number is solved for: in its logarithm, in mm, not at all
SI = {"ln": np.exp, "mm": lambda value: 1e-3 * value, "held": lambda value: value}
# name, set (None: shared by all), how, and where it starts in SI
numbers = [
${parameters
  .map(
    ({ name, set, by, value }) =>
      `    ("${name}", ${set === null ? 'None' : inQuotes(set)}, "${by}", ${by === 'held' ? value : nearby(value)}),`,
  )
  .join('\n')}
]
free = [number for number in numbers if number[2] != "held"]
held = [number for number in numbers if number[2] == "held"]


def of_rows(theta, name):
    """A number for every reading: that of its set, or the one that all share."""
    out = np.zeros(len(load))
    for own, its_set, by, value in held + [(f[0], f[1], f[2], v) for f, v in zip(free, theta)]:
        if own == name:
            rows = slice(None) if its_set is None else sets == its_set
            out[rows] = SI[by](value)
    return out


${spreads ? spreading : springText}


def model(theta):
${model}


def residuals(theta):
    return (measured - model(theta) - of_rows(theta, "datum")) * np.sqrt(weight)


start = [np.log(value) if by == "ln" else 1e3 * value for _, _, by, value in free]
solved = least_squares(residuals, start, jac="3-point", x_scale="jac", xtol=1e-15, ftol=1e-15, gtol=1e-15)
freedom = len(load) - len(free)
variance = ${noise === 'known' ? '1.0' : '2 * solved.cost / freedom'}
deviation = np.sqrt(variance * np.diag(np.linalg.inv(solved.jac.T @ solved.jac)))
reach = ${noise === 'known' ? 'norm.ppf((1 + LEVEL) / 2)' : 't.ppf((1 + LEVEL) / 2, freedom)'}

print("parameter,set,value,standard_error,low,high")
for (name, its_set, by, _), value, sd in zip(free, solved.x, deviation):
    low, high = SI[by](value - reach * sd), SI[by](value + reach * sd)
    value, sd = SI[by](value), (np.exp(value) if by == "ln" else 1e-3) * sd
    print(f"{name},{'' if its_set is None else its_set!r},{value:.10g},{sd:.10g},{low:.10g},{high:.10g}")
print(f"# residual standard deviation {np.sqrt(2 * solved.cost / freedom) if freedom else float('nan'):.10g}, {freedom} degrees of freedom")
`
}
