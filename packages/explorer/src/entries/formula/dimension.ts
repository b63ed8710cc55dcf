/** Powers of metre, kilogram and second. Angles are plain numbers: radians. */
export type Dimension = readonly [metre: number, kilogram: number, second: number]

export const PLAIN: Dimension = [0, 0, 0]

/** Things a practitioner has a word for. */
export const things: Readonly<Record<string, Dimension>> = {
  'plain number': PLAIN,
  length: [1, 0, 0],
  area: [2, 0, 0],
  volume: [3, 0, 0],
  mass: [0, 1, 0],
  time: [0, 0, 1],
  speed: [1, 0, -1],
  acceleration: [1, 0, -2],
  force: [1, 1, -2],
  'force per length': [0, 1, -2],
  pressure: [-1, 1, -2],
  'pressure per length': [-2, 1, -2],
  energy: [2, 1, -2],
  turning: [0, 0, -1],
}

/** Sums of fractions such as a third and two thirds may miss a whole number by rounding. */
const ROUNDING = 1e-9

const combine = (a: Dimension, b: Dimension, how: (x: number, y: number) => number): Dimension => [
  how(a[0], b[0]),
  how(a[1], b[1]),
  how(a[2], b[2]),
]

export const times = (a: Dimension, b: Dimension): Dimension => combine(a, b, (x, y) => x + y)
export const over = (a: Dimension, b: Dimension): Dimension => combine(a, b, (x, y) => x - y)
export const raised = (a: Dimension, power: number): Dimension => combine(a, a, x => x * power)
export const same = (a: Dimension, b: Dimension): boolean =>
  over(a, b).every(power => Math.abs(power) < ROUNDING)
export const isPlain = (a: Dimension): boolean => same(a, PLAIN)

const SYMBOLS = ['m', 'kg', 's']
const shown = (power: number): string => String(Number(power.toFixed(3))).replace('-', '−')

/** The name of a thing, or what it is made of: `kg·s^−2`. */
export function nameOf(dimension: Dimension): string {
  const found = Object.entries(things).find(([, thing]) => same(thing, dimension))
  if (found) return found[0]
  return dimension
    .flatMap((power, i) =>
      Math.abs(power) < ROUNDING ? [] : [power === 1 ? SYMBOLS[i] : `${SYMBOLS[i]}^${shown(power)}`],
    )
    .join('·')
}
