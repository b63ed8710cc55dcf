import { displayUnit, type MapQuantity, settle, sinkageMap, type Unit, withSoftness } from '@swardsink/model'
import type { TemplateResult } from 'lit'
import { shownQuantity } from '../../../../packages/explorer/src/figures/mapField.ts'
import { sinkageMapView } from '../../../../packages/explorer/src/figures/sinkageMapView.ts'
import type { Framing } from './gallery.ts'
import { units } from './units.ts'
import { mapWords } from './words.ts'

const CELLS = 120
const linear = (low: number, high: number) =>
  Array.from({ length: CELLS }, (_, i) => low + ((high - low) * i) / (CELLS - 1))
const logarithmic = (low: number, high: number) =>
  Array.from({ length: CELLS }, (_, i) => low * (high / low) ** (i / (CELLS - 1)))

type Case = {
  of: string
  mass: [number, number]
  softness: [number, number]
  quantity: MapQuantity
  at: [number, number]
}
const mm = 1e-3
const cases: Record<string, Case> = {
  sinkage: { of: 'usual', mass: [2, 12], softness: [0.07, 1.2], quantity: 'sinkage', at: [6.2, 0.1] },
  'sinkage to the end': {
    of: 'usual',
    mass: [2, 60],
    softness: [0.05, 15],
    quantity: 'sinkage',
    at: [44, 9],
  },
  'effective height': {
    of: 'usual',
    mass: [2, 12],
    softness: [0.07, 1.2],
    quantity: 'effectiveHeight',
    at: [11.5, 1.1],
  },
  'no answer': { of: 'locking', mass: [2, 60], softness: [0.07, 1.3], quantity: 'sinkage', at: [52, 1.1] },
  pressure: { of: 'grooved', mass: [2, 12], softness: [0.1, 2], quantity: 'peakPressure', at: [2.2, 0.12] },
  'narrow range': { of: 'usual', mass: [5, 6], softness: [0.2, 0.3], quantity: 'drop', at: [5.5, 0.24] },
}

export const mapFigures = (frame: Framing): Record<string, TemplateResult> =>
  Object.fromEntries(
    Object.entries(cases).map(([name, { of, mass, softness, quantity, at }]) => {
      const { unit, turf } = units[of] as (typeof units)[string]
      const condition = { kind: 'standing' } as const
      const map = sinkageMap({
        unit,
        turf,
        masses: linear(...mass),
        softnesses: logarithmic(softness[0] * mm, softness[1] * mm),
        condition,
        quantity,
      })
      const here: Unit = { ...unit, frontRoller: { ...unit.frontRoller, mass: at[0] } }
      const settled = settle({ unit: here, turf: withSoftness(turf, at[1] * mm), condition })
      const value =
        settled.outcome !== 'settled'
          ? null
          : {
              sinkage: settled.front.sinkage,
              drop: settled.drop.middle,
              effectiveHeight: settled.effectiveHeight.middle,
              peakPressure: settled.front.peakPressure,
            }[quantity]
      const { units: system } = frame(null)
      const words = mapWords(system, quantity, displayUnit(shownQuantity[quantity], system))
      const readings = [
        { mass: at[0], softness: at[1] * mm * 1.4 },
        { mass: mass[0] + 0.4 * (mass[1] - mass[0]), softness: at[1] * mm * 3 },
      ].filter(reading => reading.softness < softness[1] * mm)
      return [
        name,
        sinkageMapView({ map, mark: { mass: at[0], softness: at[1] * mm, value }, readings }, frame(words)),
      ]
    }),
  )
