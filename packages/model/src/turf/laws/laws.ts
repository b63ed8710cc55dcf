import { formula } from './formula.ts'
import type { LawKind } from './lawKind.ts'
import { layered } from './layered.ts'
import { linear } from './linear.ts'
import { logarithmic } from './logarithmic.ts'
import { measured } from './measured.ts'
import { power } from './power.ts'
import { stiffening } from './stiffening.ts'

/** The list of laws: types, menus, captions, readers and tests follow from it. */
export const laws = { linear, power, stiffening, logarithmic, layered, measured, formula } as const

type LawOf<Kind> = Kind extends LawKind<infer Law> ? Law : never
export type PressureLaw = LawOf<(typeof laws)[keyof typeof laws]>
export type LawName = PressureLaw['kind']
