import type { Reading } from '@swardsink/model'

/** Heights measured on one strip: those of a set with one roller fitted; '' and null where the table does not say. */
export type Strip = {
  readonly set: string
  readonly roller: string | null
  readonly heights: readonly number[]
  /** Over all readings: a row that is a mean of several counts for as many. */
  readonly measured: number
  /** Rows they stand in. */
  readonly rows: readonly number[]
  /** How many readings they are in all: a row may be a mean. */
  readonly count: number
  /** Standard deviation of the mean, from what each says of itself; null where one says nothing. */
  readonly standardError: number | null
}

/** The strips of a table, in the order they come. */
export function stripsOf(readings: readonly Reading[]): readonly Strip[] {
  const strips = new Map<string, Reading[]>()
  for (const reading of readings) {
    if (reading.measured.kind !== 'height') continue
    const roller = reading.foot.kind === 'roller' ? reading.foot.name : null
    const key = JSON.stringify([reading.set, roller])
    strips.set(key, [...(strips.get(key) ?? []), reading])
  }
  return [...strips.values()].flatMap(list => {
    const [first] = list
    if (!first) return []
    const heights = list.flatMap(({ measured }) => (measured.kind === 'height' ? [measured.height] : []))
    const count = list.reduce((sum, reading) => sum + reading.count, 0)
    const known = list.flatMap(({ standardDeviation: sd, count: n }) =>
      sd === undefined ? [] : [n * sd ** 2],
    )
    return [
      {
        set: first.set,
        roller: first.foot.kind === 'roller' ? first.foot.name : null,
        heights,
        measured: heights.reduce((sum, height, i) => sum + height * (list[i]?.count ?? 0), 0) / count,
        rows: list.map(({ row }) => row),
        count,
        standardError:
          known.length < list.length ? null : Math.sqrt(known.reduce((sum, part) => sum + part, 0)) / count,
      },
    ]
  })
}
