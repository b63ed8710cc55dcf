import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { compareLaws, type LawComparison, type Reading, readTable } from '@swardsink/model'
import { repository } from './files.ts'

/** The measured plates that docs/sandPlates.md is about. */
export function sandReadings(): readonly Reading[] {
  const read = readTable(readFileSync(join(repository, 'docs/sandPlates.csv'), 'utf8'))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.readings
}

const perSet = (...names: readonly string[]) => names.map(name => ({ name, per: 'set' as const }))

/** A part of the reading, where the scatter is taken to grow with it; its size comes from the residuals. */
const PART = 0.1

/** Every law fitted to every set by itself. */
export function compareOnSand(scatter: 'constant' | 'in proportion'): LawComparison {
  const all = sandReadings()
  const sinkageOf = ({ measured }: Reading) => (measured.kind === 'sinkage' ? measured.sinkage : Number.NaN)
  const readings =
    scatter === 'constant'
      ? all
      : all.map(reading => ({ ...reading, standardDeviation: PART * sinkageOf(reading) }))
  const points = all
    .filter(({ set }) => set === 'M2-1')
    .map(reading => ({ sinkage: sinkageOf(reading), pressure: reading.pressure ?? Number.NaN }))
  return compareLaws({
    readings,
    noise: { kind: 'estimated' },
    laws: [
      { law: 'linear', free: perSet('softness') },
      { law: 'power', free: perSet('softness', 'exponent') },
      { law: 'stiffening', free: perSet('softness', 'lockingDepth') },
      { law: 'logarithmic', free: perSet('softness', 'lockingDepth') },
      { law: { kind: 'measured', points }, free: perSet('softness') },
    ],
  })
}
