import { readFileSync } from 'node:fs'
import { decay, type NistSet, one, rise } from './nistModels.ts'
import { otherNistSets } from './otherNistSets.ts'

export type { NistSet } from './nistModels.ts'

export type NistRow = { readonly y: number; readonly x: readonly number[] }

/** Sets that share their readings. */
const files: Readonly<Record<string, string>> = {
  Misra1a: 'Misra1',
  Misra1b: 'Misra1',
  Misra1c: 'Misra1',
  Misra1d: 'Misra1',
}

/** The readings of a set; those of Nelson are fitted as logarithms, as certified. */
export function nistRows(name: string): readonly NistRow[] {
  const text = readFileSync(
    new URL(`../reference/data/nist/${files[name] ?? name}.csv`, import.meta.url),
    'utf8',
  )
  return text
    .trim()
    .split('\n')
    .slice(1)
    .map(line => {
      const [y = Number.NaN, ...x] = line.split(',').map(Number)
      return { y: name === 'Nelson' ? Math.log(y) : y, x }
    })
}

const { exp } = Math

/** The sets whose every digit is asked for from both starts. */
const asked: readonly NistSet[] = [
  {
    name: 'DanWood',
    model: one((x, [a = 0, b = 0]) => a * x ** b),
    starts: [
      [1, 5],
      [0.7, 4],
    ],
    certified: [7.6886226176e-1, 3.8604055871],
    deviations: [1.828197386e-2, 5.1726610913e-2],
    sumOfSquares: 4.3173084083e-3,
  },
  {
    name: 'Misra1a',
    model: one(rise),
    starts: [
      [500, 0.0001],
      [250, 0.0005],
    ],
    certified: [2.3894212918e2, 5.5015643181e-4],
    deviations: [2.7070075241, 7.2668688436e-6],
    sumOfSquares: 1.2455138894e-1,
  },
  {
    name: 'Misra1b',
    model: one((x, [a = 0, b = 0]) => a * (1 - (1 + (b * x) / 2) ** -2)),
    starts: [
      [500, 0.0001],
      [300, 0.0002],
    ],
    certified: [3.3799746163e2, 3.9039091287e-4],
    deviations: [3.1643950207, 4.2547321834e-6],
    sumOfSquares: 7.5464681533e-2,
  },
  {
    name: 'Chwirut2',
    model: one(decay),
    starts: [
      [0.1, 0.01, 0.02],
      [0.15, 0.008, 0.01],
    ],
    certified: [1.6657666537e-1, 5.1653291286e-3, 1.2150007096e-2],
    deviations: [3.830328681e-2, 6.6621605126e-4, 1.5304234767e-3],
    sumOfSquares: 5.1304802941e2,
  },
  {
    name: 'BoxBOD',
    model: one(rise),
    starts: [
      [1, 1],
      [100, 0.75],
    ],
    certified: [2.1380940889e2, 5.4723748542e-1],
    deviations: [1.2354515176e1, 1.0455993237e-1],
    sumOfSquares: 1.1680088766e3,
  },
  {
    name: 'Rat42',
    model: one((x, [a = 0, b = 0, c = 0]) => a / (1 + exp(b - c * x))),
    starts: [
      [100, 1, 0.1],
      [75, 2.5, 0.07],
    ],
    certified: [7.2462237576e1, 2.6180768402, 6.7359200066e-2],
    deviations: [1.7340283401, 8.8295217536e-2, 3.4465663377e-3],
    sumOfSquares: 8.0565229338,
  },
  {
    name: 'MGH10',
    model: one((x, [a = 0, b = 0, c = 0]) => a * exp(b / (x + c))),
    starts: [
      [2, 400000, 25000],
      [0.02, 4000, 250],
    ],
    certified: [5.609636471e-3, 6.1813463463e3, 3.4522363462e2],
    deviations: [1.5687892471e-4, 2.3309021107e1, 7.8486103508e-1],
    sumOfSquares: 8.7945855171e1,
  },
]

export const nistSets: readonly NistSet[] = [...asked, ...otherNistSets]
