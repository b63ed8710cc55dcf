import type { Linear } from '../../packages/explorer/src/look/colour.ts'
import { decode, encode, hexToLinear } from '../../packages/explorer/src/look/oklch.ts'

// The eye in a test: contrast, difference, and how colours look to those who see fewer of them.

export type Lab = readonly [lightness: number, a: number, b: number]
type Matrix = readonly [Linear, Linear, Linear]

const clamp = (channel: number) => Math.min(1, Math.max(0, channel))

/** Relative luminance. Source  WCAG 2.2; the weights are those of IEC 61966-2-1. */
export const luminance = (hex: string): number => {
  const [red, green, blue] = hexToLinear(hex)
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}

/** Contrast ratio, 1 to 21. Source  WCAG 2.2, "contrast ratio". */
export function contrast(a: string, b: string): number {
  const [la, lb] = [luminance(a), luminance(b)]
  return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05)
}

/** Machado, Oliveira, Fernandes 2009, IEEE TVCG 15(6):1291-1298, severity 1, on linear sRGB; from memory. */
const machado = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
} as const satisfies Record<string, Matrix>

/** Viénot, Brettel, Mollon 1999, Color Research and Application 24(4):243-252; from memory. */
const vienot = {
  protan: [
    [0.11238, 0.88762, 0],
    [0.11238, 0.88762, 0],
    [0.00401, -0.00401, 1],
  ],
  deutan: [
    [0.29275, 0.70725, 0],
    [0.29275, 0.70725, 0],
    [-0.02234, 0.02234, 1],
  ],
} as const satisfies Record<string, Matrix>

/** Brettel, Viénot, Mollon 1997, JOSA A 14(10):2647-2655: two half planes; numbers for linear sRGB from memory. */
const brettelTritan = {
  near: [
    [1.01277, 0.13548, -0.14826],
    [-0.01243, 0.86812, 0.14431],
    [0.07589, 0.805, 0.11911],
  ],
  far: [
    [0.93678, 0.18979, -0.12657],
    [0.06154, 0.81526, 0.1232],
    [-0.37562, 1.12767, 0.24796],
  ],
  normal: [0.03901, -0.02788, -0.01113],
} as const satisfies { near: Matrix; far: Matrix; normal: Linear }

const dot = (a: Linear, b: Linear) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
const through = (matrix: Matrix, colour: Linear): Linear => [
  clamp(dot(matrix[0], colour)),
  clamp(dot(matrix[1], colour)),
  clamp(dot(matrix[2], colour)),
]

export const visions = {
  usual: (colour: Linear): Linear => colour,
  'protan (Machado)': (colour: Linear) => through(machado.protan, colour),
  'protan (Viénot)': (colour: Linear) => through(vienot.protan, colour),
  'deutan (Machado)': (colour: Linear) => through(machado.deutan, colour),
  'deutan (Viénot)': (colour: Linear) => through(vienot.deutan, colour),
  'tritan (Machado)': (colour: Linear) => through(machado.tritan, colour),
  'tritan (Brettel)': (colour: Linear) =>
    through(dot(brettelTritan.normal, colour) >= 0 ? brettelTritan.near : brettelTritan.far, colour),
  grey: (colour: Linear): Linear => {
    const grey = dot([0.2126, 0.7152, 0.0722], colour)
    return [grey, grey, grey]
  },
} as const
export type Vision = keyof typeof visions

/** CIELAB under D65 of a linear sRGB colour, rounded to the 8 bits a screen has. */
export function labOf(linear: Linear): Lab {
  const [red, green, blue] = linear.map(c => decode(Math.round(255 * encode(clamp(c))) / 255)) as [
    number,
    number,
    number,
  ]
  const x = (0.4124564 * red + 0.3575761 * green + 0.1804375 * blue) / 0.95047
  const y = 0.2126729 * red + 0.7151522 * green + 0.072175 * blue
  const z = (0.0193339 * red + 0.119192 * green + 0.9503041 * blue) / 1.08883
  const f = (t: number) => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116)
  return [116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))]
}

export const labSeen = (hex: string, vision: Vision): Lab => labOf(visions[vision](hexToLinear(hex)))

export const differenceSeen = (a: string, b: string, vision: Vision): number =>
  ciede2000(labSeen(a, vision), labSeen(b, vision))

const radians = (degrees: number) => (degrees * Math.PI) / 180
const hueOf = (b: number, a: number) =>
  a === 0 && b === 0 ? 0 : ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360
const grown = (chroma: number) => Math.sqrt(chroma ** 7 / (chroma ** 7 + 25 ** 7))

/** Source  Sharma, Wu, Dalal 2005, Color Research and Application 30(1):21-30; all weights 1. */
export function ciede2000([l1, a1, b1]: Lab, [l2, a2, b2]: Lab): number {
  const stretch = 0.5 * (1 - grown((Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2))
  const [ap1, ap2] = [a1 * (1 + stretch), a2 * (1 + stretch)]
  const [c1, c2] = [Math.hypot(ap1, b1), Math.hypot(ap2, b2)]
  const [h1, h2] = [hueOf(b1, ap1), hueOf(b2, ap2)]
  const grey = c1 * c2 === 0
  const turn = h2 - h1
  const dh = grey ? 0 : turn > 180 ? turn - 360 : turn < -180 ? turn + 360 : turn
  const dH = 2 * Math.sqrt(c1 * c2) * Math.sin(radians(dh / 2))
  const sum = h1 + h2
  const h = grey ? sum : Math.abs(turn) <= 180 ? sum / 2 : (sum + (sum < 360 ? 360 : -360)) / 2
  const [l, c] = [(l1 + l2) / 2, (c1 + c2) / 2]
  const t =
    1 -
    0.17 * Math.cos(radians(h - 30)) +
    0.24 * Math.cos(radians(2 * h)) +
    0.32 * Math.cos(radians(3 * h + 6)) -
    0.2 * Math.cos(radians(4 * h - 63))
  const sl = 1 + (0.015 * (l - 50) ** 2) / Math.sqrt(20 + (l - 50) ** 2)
  const sc = 1 + 0.045 * c
  const sh = 1 + 0.015 * c * t
  const rotation = -2 * grown(c) * Math.sin(radians(60 * Math.exp(-(((h - 275) / 25) ** 2))))
  const [x, y, z] = [(l2 - l1) / sl, (c2 - c1) / sc, dH / sh]
  return Math.sqrt(x * x + y * y + z * z + rotation * y * z)
}
