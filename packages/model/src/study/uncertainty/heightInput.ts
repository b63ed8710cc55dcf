import type { Condition } from '../../contact/index.ts'
import type { QuantityName } from '../../quantities/index.ts'
import { isGrooved } from '../../roller/index.ts'
import type { Turf } from '../../turf/index.ts'
import type { Unit } from '../../unit/index.ts'
import { turfParameters, turfWith } from '../fit/compliance/lawParameters.ts'

/** What a height hangs on, put together. */
export type Parts = { readonly unit: Unit; readonly turf: Turf; readonly condition: Condition }

/** One number that a height hangs on: its value as given, and the parts with another in its place. */
export type HeightInput = {
  readonly name: string
  readonly quantity: QuantityName
  readonly nominal: number
  /** The parts with another value in its place; numbers of a law are put in all together instead. */
  readonly put: ((parts: Parts, value: number) => Parts) | 'law'
}

/** A copy with the number at a path of names replaced. */
function replaced<Whole>(whole: Whole, [name, ...rest]: readonly string[], number: number): Whole {
  if (name === undefined) return number as Whole
  if (Array.isArray(whole))
    return whole.map((item, i) => (i === Number(name) ? replaced(item, rest, number) : item)) as Whole
  return { ...whole, [name]: replaced(whole[name as keyof Whole], rest, number) }
}

/** An input that stands under its own name in one of the parts; none where it is not given. */
function standing(
  part: keyof Parts,
  path: string,
  quantity: QuantityName,
  nominal: number | undefined,
): HeightInput[] {
  if (nominal === undefined) return []
  const names = path.split('.')
  return [
    {
      name: path,
      quantity,
      nominal,
      put: (parts, value) => ({ ...parts, [part]: replaced(parts[part], names, value) }),
    },
  ]
}

/** Numbers of the law, by the names a fit calls them. */
const lawInputs = ({ law }: Turf): HeightInput[] =>
  turfParameters(law)
    .filter(({ name }) => name !== 'spread')
    .map(({ name, quantity, given = Number.NaN }) => ({
      name,
      quantity: quantity ?? 'ratio',
      nominal: given,
      put: 'law',
    }))

/** What of its turf a height hangs on. */
export const turfInputs = (turf: Turf): HeightInput[] => [
  ...lawInputs(turf),
  ...standing('turf', 'spread', 'spread', turf.spread ?? 0),
  ...standing('turf', 'rebound', 'ratio', turf.rebound ?? 1),
  ...standing('turf', 'lasting', 'ratio', turf.lasting ?? 0),
  ...standing('turf', 'recoveryTime', 'time', turf.recoveryTime ?? 0),
]

function rollerInputs(unit: Unit, end: 'frontRoller' | 'rearRoller'): HeightInput[] {
  const { mass, diameter, length, surface } = unit[end]
  const at = (name: string, quantity: QuantityName, value: number) =>
    standing('unit', `${end}.${name}`, quantity, value)
  return [
    ...at('mass', 'mass', mass),
    ...at('diameter', 'diameter', diameter),
    ...at('length', 'length', length),
    ...(isGrooved(surface)
      ? [
          ...at('surface.pitch', 'pitch', surface.pitch),
          ...at('surface.land', 'land', surface.land),
          ...at('surface.depth', 'grooveDepth', surface.depth),
        ]
      : []),
  ]
}

/** Errors of the readings the unit was weighed with: a reading more is mass more of the body, over that roller. */
const scaleInputs: readonly HeightInput[] = (['front', 'rear'] as const).map(end => ({
  name: `scales.${end}`,
  quantity: 'mass',
  nominal: 0,
  put: (parts: Parts, error: number) => {
    const { body, wheelbase } = parts.unit
    const mass = body.mass + error
    const at = (body.mass * body.at + (end === 'rear' ? error * wheelbase : 0)) / mass
    return { ...parts, unit: { ...parts.unit, body: { ...body, mass, at } } }
  },
}))

/** What of unit and use a height hangs on. The scales come last: they stand on the body and the wheelbase as drawn. */
function unitInputs({ unit, condition }: Omit<Parts, 'turf'>): HeightInput[] {
  const at = (path: string, quantity: QuantityName, value: number | undefined) =>
    standing('unit', path, quantity, value)
  return [
    ...at('wheelbase', 'wheelbase', unit.wheelbase),
    ...at('edge', 'place', unit.edge),
    ...at('benchHeight', 'height', unit.benchHeight),
    ...rollerInputs(unit, 'frontRoller'),
    ...rollerInputs(unit, 'rearRoller'),
    ...at('body.mass', 'mass', unit.body.mass),
    ...at('body.at', 'place', unit.body.at),
    ...at('body.height', 'place', unit.body.height),
    ...at('body.offset', 'place', unit.body.offset ?? 0),
    ...at('slopeAlong', 'angle', unit.slopeAlong ?? 0),
    ...at('slopeAcross', 'angle', unit.slopeAcross ?? 0),
    ...at('hitchHeight', 'place', unit.hitchHeight),
    ...(unit.loads ?? []).flatMap((load, i) => [
      ...at(`loads.${i}.mass`, 'mass', load.mass),
      ...at(`loads.${i}.down`, 'load', load.down),
      ...at(`loads.${i}.forward`, 'load', load.forward),
      ...at(`loads.${i}.at`, 'place', load.at),
      ...at(`loads.${i}.height`, 'place', load.height),
    ]),
    ...(condition.kind === 'mowing' ? standing('condition', 'speed', 'speed', condition.speed) : []),
    ...scaleInputs,
  ]
}

/** Everything a height hangs on that may scatter, by name, in the order it is put in. */
export const heightInputs = (parts: Parts): HeightInput[] => [...turfInputs(parts.turf), ...unitInputs(parts)]

/** The parts at values of some of their inputs; undefined where the law takes no such numbers. */
export function partsAt(
  parts: Parts,
  inputs: readonly HeightInput[],
  valueAt: (input: number) => number,
): Parts | undefined {
  const ofLaw = new Map<string, number>()
  inputs.forEach(({ name, put }, k) => {
    if (put === 'law') ofLaw.set(name, valueAt(k))
  })
  const changed = ofLaw.size > 0 ? turfWith(parts.turf.law, ofLaw) : parts.turf
  if (!changed) return undefined
  let put: Parts = { ...parts, turf: { ...parts.turf, law: changed.law } }
  inputs.forEach((input, k) => {
    if (input.put !== 'law') put = input.put(put, valueAt(k))
  })
  return put
}
