/** One thing to time: does its work and says how many pieces it did. */
export type Job = { readonly name: string; readonly per: string; readonly run: () => number }

export type Timing = {
  readonly name: string
  readonly per: string
  /** Microseconds of this thread's time a piece: median of the rounds, and half the spread of their middle half. */
  readonly median_us: number
  readonly spread_us: number
  readonly pieces: number
}

const ROUNDS = 15
const WARM = 3

const quantile = (sorted: readonly number[], q: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))]!

/** Times every job in turn, round after round, so that a slow spell of the machine falls on all of them. */
export function interleaved(jobs: readonly Job[]): Timing[] {
  const times = jobs.map((): number[] => [])
  const pieces = jobs.map(() => 0)
  for (let round = -WARM; round < ROUNDS; round++)
    jobs.forEach((job, i) => {
      const before = process.hrtime.bigint()
      const done = job.run()
      const took = Number(process.hrtime.bigint() - before) / 1e3 / done
      pieces[i] = done
      if (round >= 0) times[i]!.push(took)
    })
  return jobs.map(({ name, per }, i) => {
    const sorted = [...times[i]!].sort((a, b) => a - b)
    return {
      name,
      per,
      median_us: quantile(sorted, 0.5),
      spread_us: (quantile(sorted, 0.75) - quantile(sorted, 0.25)) / 2,
      pieces: pieces[i]!,
    }
  })
}
