import type { Interval } from '../../packages/model/src/study/index.ts'

type Case = {
  readonly what: string
  readonly kind: string
  readonly interval: Interval | undefined
  readonly truth: number
  /** Whether the study fails when this covers too little or too much. */
  readonly held: boolean
}

type Line = { readonly held: boolean; offered: number; covered: number; below: number; width: number }

export type Counted = {
  readonly name: string
  readonly lines: ReadonlyMap<string, Line>
  readonly losses: ReadonlyMap<string, number>
  add(one: Case): void
  lost(why: string): void
}

/** How often intervals of each kind held the truth, in one design. */
export function counted(name: string): Counted {
  const lines = new Map<string, Line>()
  const losses = new Map<string, number>()
  return {
    name,
    lines,
    losses,
    add({ what, kind, interval, truth, held }) {
      const key = `${what}, ${kind}`
      const line = lines.get(key) ?? { held, offered: 0, covered: 0, below: 0, width: 0 }
      lines.set(key, line)
      if (interval?.kind !== 'interval') return
      line.offered++
      line.width += Math.log(interval.high / interval.low)
      if (truth < interval.low) line.below++
      else if (truth <= interval.high) line.covered++
    },
    lost(why) {
      losses.set(why, (losses.get(why) ?? 0) + 1)
    },
  }
}

const LOW = 93
const HIGH = 97
const PER_CENT = 100

const said = (value: number) => value.toFixed(1).padStart(5)

/** A table of coverages, and how many of those that are held to 93 to 97 % lie outside. */
export function report(tallies: readonly Counted[], studies: number) {
  let outside = 0
  const blocks = tallies.map(({ name, lines, losses }) => {
    const rows = [...lines].map(([key, { held, offered, covered, below, width }]) => {
      if (offered === 0) return `  ${key.padEnd(34)} not offered`
      const coverage = (PER_CENT * covered) / offered
      const wrong = held && !(coverage >= LOW && coverage <= HIGH)
      if (wrong) outside++
      const above = offered - covered - below
      const ends = `truth below ${said((PER_CENT * below) / offered)}, above ${said((PER_CENT * above) / offered)}`
      const some = offered === studies ? '' : `, offered in ${offered}`
      const verdict = held ? (wrong ? '  OUTSIDE' : '') : '  (beside)'
      return `  ${key.padEnd(34)} ${said(coverage)} %  ${ends}; factor ${Math.exp(width / offered).toFixed(2)}${some}${verdict}`
    })
    const lost = [...losses].map(([why, count]) => `  ${count} studies without a fit: ${why}`)
    return [name, ...rows, ...lost].join('\n')
  })
  const text = [
    `Coverage of 95 % intervals in ${studies} simulated studies each; those not marked (beside) must lie in ${LOW} to ${HIGH} %.`,
    'The factor is that between the ends of an interval, in the geometric mean.',
    ...blocks,
    outside === 0 ? 'All inside.' : `${outside} outside.`,
  ].join('\n')
  return { text, outside }
}
