import { randomFrom } from '../../../../packages/model/src/numerics/index.ts'
import type { Reading } from '../../../../packages/model/src/readings/index.ts'
import { type PressureLaw, sinkageAt } from '../../../../packages/model/src/turf/index.ts'

const mm = 1e-3

type Question = {
  readonly law: (set: number) => PressureLaw
  readonly sets?: number
  readonly pressures: readonly number[]
  readonly repeats?: number
  readonly noise: number
  readonly seed?: number
  readonly diameter?: number
}

/** Invented plate readings of the Ellerby Hollow Turf School: a wide plate, so that the law is all there is. */
export function ellerbyReadings(asked: Question): Reading[] {
  const { law, sets = 1, pressures, repeats = 2, noise, seed = 31, diameter = 60 * mm } = asked
  const random = randomFrom(seed)
  return Array.from({ length: sets }, (_, g) =>
    pressures
      .flatMap(pressure =>
        Array.from({ length: repeats }, () => ({
          pressure,
          z: sinkageAt(law(g), pressure) + noise * random.normal(),
        })),
      )
      .map(({ pressure, z }) => ({
        set: `green ${g + 1}`,
        foot: { kind: 'plate', diameter } as const,
        pressure,
        measured: { kind: 'sinkage', sinkage: z } as const,
        count: 1,
      })),
  )
    .flat()
    .map((reading, i) => ({ row: i + 2, ...reading }))
}
