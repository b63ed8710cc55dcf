import type { ComplianceFit, Interval, Reading } from '@swardsink/model'

/** One set of readings: its softness, and what is known of the day. */
export type SetFact = {
  readonly set: string
  readonly readings: number
  readonly softness: number
  readonly interval: Interval
  /** Days since 1970; null where no reading says one. */
  readonly day: number | null
  /** Mean of its readings, a part; null where none says one. */
  readonly moisture: number | null
}

const DAY = 86_400_000

function dayOf(readings: readonly Reading[]): number | null {
  const days = readings.flatMap(({ date }) => {
    const time = date === undefined ? Number.NaN : Date.parse(date)
    return Number.isFinite(time) ? [time / DAY] : []
  })
  return days.length === 0 ? null : Math.min(...days)
}

function moistureOf(readings: readonly Reading[]): number | null {
  const known = readings.flatMap(({ moisture }) => moisture ?? [])
  return known.length === 0 ? null : known.reduce((sum, one) => sum + one, 0) / known.length
}

/** The softness of each set, where each has one of its own. */
export function setFacts(fit: ComplianceFit, readings: readonly Reading[]): readonly SetFact[] {
  return fit.parameters.flatMap(({ name, set, value, interval }) => {
    if (name !== 'softness' || set === undefined) return []
    const own = readings.filter(reading => reading.set === set && reading.measured.kind !== 'height')
    const count = fit.readings.filter(reading => reading.set === set).length
    return [{ set, readings: count, softness: value, interval, day: dayOf(own), moisture: moistureOf(own) }]
  })
}
