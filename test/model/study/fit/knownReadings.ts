import {
  type Plate,
  press,
  pressPlate,
  type Reading,
  type Roller,
  type Scenario,
  type Turf,
  type Unit,
} from '@swardsink/model'

const mm = 1e-3

const roller = (mass: number, diameter: number, surface: Roller['surface'] = { kind: 'smooth' }): Roller => ({
  mass,
  diameter,
  length: 0.52,
  surface,
})

/** Rollers of an invented rack. */
export const rollers = {
  smooth: roller(5.2, 56 * mm),
  stout: roller(9.4, 74 * mm),
  grooved: roller(6.1, 60 * mm, { kind: 'grooved', pitch: 12 * mm, land: 5 * mm, depth: 4 * mm }),
  discs: roller(4.6, 62 * mm, { kind: 'grooved', pitch: 26 * mm, land: 6 * mm, depth: 9 * mm }),
}
export type RollerName = keyof typeof rollers

export const unit: Unit = {
  wheelbase: 210 * mm,
  edge: 118 * mm,
  benchHeight: 4.4 * mm,
  frontRoller: rollers.smooth,
  rearRoller: roller(4.1, 52 * mm),
  body: { mass: 19.3, at: 96 * mm, height: 92 * mm },
}

export const scenario: Pick<Scenario, 'unit' | 'rollers'> = { unit, rollers }

export const standing = { kind: 'standing' } as const

/** What presses: a roller of the rack by name, or a round plate by its diameter in mm. */
export type Presser = RollerName | number

export const plateOf = (diameter_mm: number): Plate => ({ diameter: diameter_mm * mm })

/** Sinkage by the functions a reader calls, which know nothing of fits. */
export function sinkageOf(presser: Presser, load: number, turf: Turf): number {
  const pressed =
    typeof presser === 'number'
      ? pressPlate({ plate: plateOf(presser), turf, load })
      : press({ roller: rollers[presser], turf, load, condition: standing })
  if (pressed.outcome !== 'settled') throw new Error(`${presser} under ${load} N: ${pressed.outcome}`)
  return pressed.sinkage
}

export const footOf = (presser: Presser): Reading['foot'] =>
  typeof presser === 'number' ? { kind: 'plate', diameter: presser * mm } : { kind: 'roller', name: presser }

type Laid = {
  readonly turf: Turf
  readonly pressers: readonly Presser[]
  readonly loads: (presser: Presser) => readonly number[]
  readonly set?: string
  /** Added to every sinkage. */
  readonly error?: (row: number) => number
}

let row = 1
/** Readings of a turf without error, or with the one asked for. */
export const readingsOf = ({ turf, pressers, loads, set = '', error = () => 0 }: Laid): Reading[] =>
  pressers.flatMap(presser =>
    loads(presser).map((load): Reading => {
      row++
      return {
        row,
        set,
        foot: footOf(presser),
        load,
        measured: { kind: 'sinkage', sinkage: sinkageOf(presser, load, turf) + error(row) },
        count: 1,
      }
    }),
  )

/** Loads that press plates and rollers at tens of kilopascals. */
export const loadsFor = (presser: Presser): readonly number[] =>
  typeof presser === 'number'
    ? [6e3, 11e3, 18e3, 27e3].map(pressure => (pressure * Math.PI * (presser * mm) ** 2) / 4)
    : [55, 90, 160, 290]
