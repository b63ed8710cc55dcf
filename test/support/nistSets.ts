import { readFileSync } from 'node:fs'

/** A set of NIST's nonlinear regression collection with its certified answer. */
export type NistSet = {
  readonly name: string
  /** The value at a row's predictors. */
  readonly model: (x: readonly number[], b: readonly number[]) => number
  readonly starts: readonly (readonly number[])[]
  /** Certified values, their standard deviations and the residual sum of squares, as printed. */
  readonly certified: readonly number[]
  readonly deviations: readonly number[]
  readonly sumOfSquares: number
}

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
const rise = (x: number, [a = 0, b = 0]: readonly number[]) => a * (1 - exp(-b * x))
const decay = (x: number, [a = 0, b = 0, c = 0]: readonly number[]) => exp(-a * x) / (b + c * x)
const threeDecays = (x: number, [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0]: readonly number[]) =>
  a * exp(-b * x) + c * exp(-d * x) + e * exp(-f * x)
const twoPeaks = (x: number, [a = 0, b = 0, c = 0, d = 0, e = 1, f = 0, g = 0, h = 1]: readonly number[]) =>
  a * exp(-b * x) + c * exp(-(((x - d) / e) ** 2)) + f * exp(-(((x - g) / h) ** 2))
const cubics = (x: number, [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0]: readonly number[]) =>
  (a + x * (b + x * (c + x * d))) / (1 + x * (e + x * (f + x * g)))

const one =
  (f: (x: number, b: readonly number[]) => number): NistSet['model'] =>
  (x, b) =>
    f(x[0]!, b)

/** From reference/values.md of the project's founding: the sets it must fit. */
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

const others: readonly NistSet[] = [
  {
    name: 'Misra1c',
    model: one((x, [a = 0, b = 0]) => a * (1 - 1 / Math.sqrt(1 + 2 * b * x))),
    starts: [
      [500, 0.0001],
      [600, 0.0002],
    ],
    certified: [6.3642725809e2, 2.0813627256e-4],
    deviations: [4.6638326572, 1.7728423155e-6],
    sumOfSquares: 4.0966836971e-2,
  },
  {
    name: 'Misra1d',
    model: one((x, [a = 0, b = 0]) => (a * b * x) / (1 + b * x)),
    starts: [
      [500, 0.0001],
      [450, 0.0003],
    ],
    certified: [4.3736970754e2, 3.0227324449e-4],
    deviations: [3.6489174345, 2.9334354479e-6],
    sumOfSquares: 5.6419295283e-2,
  },
  {
    name: 'Chwirut1',
    model: one(decay),
    starts: [
      [0.1, 0.01, 0.02],
      [0.15, 0.008, 0.01],
    ],
    certified: [1.902781837e-1, 6.1314004477e-3, 1.0530908399e-2],
    deviations: [2.1938557035e-2, 3.4500025051e-4, 7.9281847748e-4],
    sumOfSquares: 2.3844771393e3,
  },
  {
    name: 'Rat43',
    model: one((x, [a = 0, b = 0, c = 0, d = 1]) => a / (1 + exp(b - c * x)) ** (1 / d)),
    starts: [
      [100, 10, 1, 1],
      [700, 5, 0.75, 1.3],
    ],
    certified: [6.996415127e2, 5.2771253025, 7.5962938329e-1, 1.2792483859],
    deviations: [1.6302297817e1, 2.0828735829, 1.9566123451e-1, 6.8761936385e-1],
    sumOfSquares: 8.786404908e3,
  },
  {
    name: 'MGH09',
    model: one((x, [a = 0, b = 0, c = 0, d = 0]) => (a * (x * x + x * b)) / (x * x + x * c + d)),
    starts: [
      [25, 39, 41.5, 39],
      [0.25, 0.39, 0.415, 0.39],
    ],
    certified: [1.9280693458e-1, 1.9128232873e-1, 1.2305650693e-1, 1.3606233068e-1],
    deviations: [1.1435312227e-2, 1.9633220911e-1, 8.0842031232e-2, 9.0025542308e-2],
    sumOfSquares: 3.0750560385e-4,
  },
  {
    name: 'MGH17',
    model: one((x, [a = 0, b = 0, c = 0, d = 0, e = 0]) => a + b * exp(-x * d) + c * exp(-x * e)),
    starts: [
      [50, 150, -100, 1, 2],
      [0.5, 1.5, -1, 0.01, 0.02],
    ],
    certified: [3.7541005211e-1, 1.9358469127, -1.4646871366, 1.286753464e-2, 2.2122699662e-2],
    deviations: [2.0723153551e-3, 2.2031669222e-1, 2.2175707739e-1, 4.4861358114e-4, 8.9471996575e-4],
    sumOfSquares: 5.4648946975e-5,
  },
  {
    name: 'Lanczos1',
    model: one(threeDecays),
    starts: [
      [1.2, 0.3, 5.6, 5.5, 6.5, 7.6],
      [0.5, 0.7, 3.6, 4.2, 4, 6.3],
    ],
    certified: [9.5100000027e-2, 1.0000000001, 8.6070000013e-1, 3.0000000002, 1.5575999998, 5.0000000001],
    deviations: [
      5.3347304234e-11, 2.7473038179e-10, 1.3576062225e-10, 3.3308253069e-10, 1.8815731448e-10,
      1.1057500538e-10,
    ],
    sumOfSquares: 1.4307867721e-25,
  },
  {
    name: 'Lanczos2',
    model: one(threeDecays),
    starts: [
      [1.2, 0.3, 5.6, 5.5, 6.5, 7.6],
      [0.5, 0.7, 3.6, 4.2, 4, 6.3],
    ],
    certified: [9.6251029939e-2, 1.0057332849, 8.6424689056e-1, 3.0078283915, 1.5529016879, 5.00287981],
    deviations: [
      6.6770575477e-4, 3.3989646176e-3, 1.7185846685e-3, 4.1707005856e-3, 2.3744381417e-3, 1.3958787284e-3,
    ],
    sumOfSquares: 2.2299428125e-11,
  },
  {
    name: 'Lanczos3',
    model: one(threeDecays),
    starts: [
      [1.2, 0.3, 5.6, 5.5, 6.5, 7.6],
      [0.5, 0.7, 3.6, 4.2, 4, 6.3],
    ],
    certified: [8.6816414977e-2, 9.5498101505e-1, 8.4400777463e-1, 2.9515951832, 1.5825685901, 4.9863565084],
    deviations: [
      1.7197908859e-2, 9.7041624475e-2, 4.1488663282e-2, 1.0766312506e-1, 5.8371576281e-2, 3.4436403035e-2,
    ],
    sumOfSquares: 1.6117193594e-8,
  },
  {
    name: 'Eckerle4',
    model: one((x, [a = 0, b = 1, c = 0]) => (a / b) * exp(-0.5 * ((x - c) / b) ** 2)),
    starts: [
      [1, 10, 500],
      [1.5, 5, 450],
    ],
    certified: [1.5543827178, 4.0888321754, 4.5154121844e2],
    deviations: [1.5408051163e-2, 4.6803020753e-2, 4.6800518816e-2],
    sumOfSquares: 1.4635887487e-3,
  },
  {
    name: 'Roszman1',
    model: one((x, [a = 0, b = 0, c = 0, d = 0]) => a - b * x - Math.atan(c / (x - d)) / Math.PI),
    starts: [
      [0.1, -0.00001, 1000, -100],
      [0.2, -0.000005, 1200, -150],
    ],
    certified: [2.0196866396e-1, -6.1953516256e-6, 1.2044556708e3, -1.8134269537e2],
    deviations: [1.9172666023e-2, 3.2058931691e-6, 7.4050983057e1, 4.9573513849e1],
    sumOfSquares: 4.9484847331e-4,
  },
  {
    name: 'Thurber',
    model: one(cubics),
    starts: [
      [1000, 1000, 400, 40, 0.7, 0.3, 0.03],
      [1300, 1500, 500, 75, 1, 0.4, 0.05],
    ],
    certified: [
      1.28813968e3, 1.4910792535e3, 5.8323836877e2, 7.5416644291e1, 9.6629502864e-1, 3.9797285797e-1,
      4.9727297349e-2,
    ],
    deviations: [
      4.6647963344, 3.9571156086e1, 2.8698696102e1, 5.567537027, 3.1333340687e-2, 1.4984928198e-2,
      6.5842344623e-3,
    ],
    sumOfSquares: 5.6427082397e3,
  },
  {
    name: 'Hahn1',
    model: one(cubics),
    starts: [
      [10, -1, 0.05, -0.00001, -0.05, 0.001, -0.000001],
      [1, -0.1, 0.005, -0.000001, -0.005, 0.0001, -0.0000001],
    ],
    certified: [
      1.0776351733, -1.2269296921e-1, 4.086375061e-3, -1.4262662514e-6, -5.7609940901e-3, 2.4053735503e-4,
      -1.2314450199e-7,
    ],
    deviations: [
      1.7070154742e-1, 1.2000289189e-2, 2.2508314937e-4, 2.7578037666e-7, 2.4712888219e-4, 1.0449373768e-5,
      1.3027335327e-8,
    ],
    sumOfSquares: 1.5324382854,
  },
  {
    name: 'Kirby2',
    model: one((x, [a = 0, b = 0, c = 0, d = 0, e = 0]) => (a + x * (b + x * c)) / (1 + x * (d + x * e))),
    starts: [
      [2, -0.1, 0.003, -0.001, 0.00001],
      [1.5, -0.15, 0.0025, -0.0015, 0.00002],
    ],
    certified: [1.6745063063, -1.3927397867e-1, 2.5961181191e-3, -1.724181187e-3, 2.1664802578e-5],
    deviations: [8.7989634338e-2, 4.1182041386e-3, 4.1856520458e-5, 5.8931897355e-5, 2.0129761919e-7],
    sumOfSquares: 3.9050739624,
  },
  {
    name: 'Nelson',
    model: ([x = 0, t = 0], [a = 0, b = 0, c = 0]) => a - b * x * exp(-c * t),
    starts: [
      [2, 0.0001, -0.01],
      [2.5, 0.000000005, -0.05],
    ],
    certified: [2.5906836021, 5.6177717026e-9, -5.7701013174e-2],
    deviations: [1.9149996413e-2, 6.112409654e-9, 3.9572366543e-3],
    sumOfSquares: 3.7976833176,
  },
  {
    name: 'Gauss1',
    model: one(twoPeaks),
    starts: [
      [97, 0.009, 100, 65, 20, 70, 178, 16.5],
      [94, 0.0105, 99, 63, 25, 71, 180, 20],
    ],
    certified: [
      9.8778210871e1, 1.0497276517e-2, 1.0048990633e2, 6.7481111276e1, 2.312977336e1, 7.1994503004e1,
      1.7899805021e2, 1.8389389025e1,
    ],
    deviations: [
      5.752731273e-1, 1.1406289017e-4, 5.8831775752e-1, 1.0460593412e-1, 1.7439951146e-1, 6.2622793913e-1,
      1.2436988217e-1, 2.0134312832e-1,
    ],
    sumOfSquares: 1.3158222432e3,
  },
  {
    name: 'Gauss2',
    model: one(twoPeaks),
    starts: [
      [96, 0.009, 103, 106, 18, 72, 151, 18],
      [98, 0.0105, 103, 105, 20, 73, 150, 20],
    ],
    certified: [
      9.9018328406e1, 1.0994945399e-2, 1.0188022528e2, 1.0703095519e2, 2.3578584029e1, 7.2045589471e1,
      1.5327010194e2, 1.9525972636e1,
    ],
    deviations: [
      5.3748766879e-1, 1.3335306766e-4, 5.9217315772e-1, 1.5006798316e-1, 2.2695595067e-1, 6.1721965884e-1,
      1.9466674341e-1, 2.6416549393e-1,
    ],
    sumOfSquares: 1.2475282092e3,
  },
  {
    name: 'Gauss3',
    model: one(twoPeaks),
    starts: [
      [94.9, 0.009, 90.1, 113, 20, 73.8, 140, 20],
      [96, 0.0096, 80, 110, 25, 74, 139, 25],
    ],
    certified: [
      9.894036897e1, 1.0945879335e-2, 1.0069553078e2, 1.1163619459e2, 2.3300500029e1, 7.3705031418e1,
      1.4776164251e2, 1.966822123e1,
    ],
    deviations: [
      5.3005192833e-1, 1.2554058911e-4, 8.1256587317e-1, 3.5317859757e-1, 3.6584783023e-1, 1.2091239082,
      4.0488183351e-1, 3.7806634336e-1,
    ],
    sumOfSquares: 1.244484636e3,
  },
  {
    name: 'ENSO',
    model: one((x, [a = 0, b = 0, c = 0, d = 1, e = 0, f = 0, g = 1, h = 0, i = 0]) => {
      const year = (2 * Math.PI * x) / 12
      const slow = (2 * Math.PI * x) / d
      const middle = (2 * Math.PI * x) / g
      return (
        a +
        b * Math.cos(year) +
        c * Math.sin(year) +
        e * Math.cos(slow) +
        f * Math.sin(slow) +
        h * Math.cos(middle) +
        i * Math.sin(middle)
      )
    }),
    starts: [
      [11, 3, 0.5, 40, -0.7, -1.3, 25, -0.3, 1.4],
      [10, 3, 0.5, 44, -1.5, 0.5, 26, -0.1, 1.5],
    ],
    certified: [
      1.0510749193e1, 3.0762128085, 5.3280138227e-1, 4.43110887e1, -1.6231428586, 5.2554493756e-1,
      2.688761444e1, 2.1232288488e-1, 1.4966870418,
    ],
    deviations: [
      1.7488832467e-1, 2.4310052139e-1, 2.4354686618e-1, 9.4408025976e-1, 2.8078369611e-1, 4.8073701119e-1,
      4.161293913e-1, 5.1460022911e-1, 2.5434468893e-1,
    ],
    sumOfSquares: 7.8853978668e2,
  },
  {
    name: 'Bennett5',
    model: one((x, [a = 0, b = 0, c = 1]) => a * (b + x) ** (-1 / c)),
    starts: [
      [-2000, 50, 0.8],
      [-1500, 45, 0.85],
    ],
    certified: [-2.5235058043e3, 4.6736564644e1, 9.3218483193e-1],
    deviations: [2.9715175411e2, 1.2448871856, 2.0272299378e-2],
    sumOfSquares: 5.2404744073e-4,
  },
]

export const nistSets: readonly NistSet[] = [...asked, ...others]
