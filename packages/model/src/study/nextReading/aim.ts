import { describe, InputError, type Metres } from '../../quantities/index.ts'
import { type ComplianceFit, turfOf } from '../fit/compliance/complianceFit.ts'
import type { Beginning } from './beginning.ts'
import { heightSlopes } from './heightSlopes.ts'
import { type NextQuestion, STANDING } from './nextQuestion.ts'

/** What the next reading is to narrow. */
export type Aim =
  | { readonly kind: 'height' }
  | { readonly kind: 'parameter'; readonly name: string; readonly set?: string }
  /** All numbers of the fit together. */
  | { readonly kind: 'all' }

/** The height of the unit, and how it changes with each free number of the fit. */
export type HeightAlong = { readonly height: Metres; readonly along: readonly number[] }

/** How the height hangs on the free numbers of the fit; null without a unit, or where it has no answer. */
export function heightAlong(
  { fit, unit, condition, set }: NextQuestion,
  { free }: Beginning,
): HeightAlong | null {
  if (!unit) return null
  const wanted = set ?? (fit.turf ? undefined : onlySet(fit))
  const turf = turfOf(fit, wanted)
  const isOfSet = (one: { readonly set?: string }) => one.set === undefined || one.set === wanted
  const names = free.filter(isOfSet).map(({ name }) => name)
  const found = heightSlopes({ unit, turf, condition: condition ?? STANDING }, names)
  if (!found) return null
  return {
    height: found.height,
    along: free.map(one => (isOfSet(one) ? (found.slopes.get(one.name) ?? 0) : 0)),
  }
}

function onlySet({ turfs }: ComplianceFit): string {
  const names = Object.keys(turfs)
  if (names.length === 1) return names[0]!
  throw new InputError({
    path: 'set',
    expected: `one of ${names.map(name => JSON.stringify(name)).join(', ')}`,
    received: 'nothing',
  })
}

/** The direction whose variance is to go down; null for all numbers together. */
export function directionOf(
  aim: Aim,
  { free }: Beginning,
  height: HeightAlong | null,
): readonly number[] | null {
  if (aim.kind === 'all') return null
  if (aim.kind === 'height') {
    if (height) return height.along
    throw new InputError({ path: 'aim', expected: 'a unit that has a height on this turf', received: 'none' })
  }
  const place = free.findIndex(
    ({ name, set }) => name === aim.name && (aim.set === undefined || set === aim.set),
  )
  if (place >= 0) return free.map((_, k) => (k === place ? 1 : 0))
  throw new InputError({
    path: 'aim.name',
    expected: `one of ${free.map(({ name }) => name).join(', ')}`,
    received: describe(aim.name),
  })
}
