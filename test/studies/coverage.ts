// npm run study:coverage [-- --studies 200]: how often the intervals that are offered hold the truth.
import { press, type Roller, settle, type Turf, type Unit } from '@swardsink/model'
import { type Random, randomFrom } from '../../packages/model/src/numerics/index.ts'
import type { Reading } from '../../packages/model/src/readings/index.ts'
import { acrossFittedSets, type FittedSets } from '../../packages/model/src/study/fit/judge/index.ts'
import {
  type ComplianceQuestion,
  fitCompliance,
  type Interval,
} from '../../packages/model/src/study/index.ts'
import { type Counted, counted, report } from './coverageReport.ts'

const mm = 1e-3
const standing = { kind: 'standing' } as const

// Invented: a gauge of the Ellerby Hollow Turf School, its roller, and a unit with two smooth rollers.
const gaugeRoller: Roller = { mass: 5.2, diameter: 58 * mm, length: 0.55, surface: { kind: 'smooth' } }
const unit: Unit = {
  wheelbase: 0.19,
  edge: 0.105,
  benchHeight: 4.2 * mm,
  frontRoller: { ...gaugeRoller, mass: 5.9 },
  rearRoller: { ...gaugeRoller, mass: 4.4, diameter: 51 * mm },
  body: { mass: 18.3, at: 0.09, height: 0.07 },
}

/** How a study is made, and what is true in it. */
type Design = {
  readonly name: string
  readonly sets: readonly number[]
  /** Of the population: median, scatter of logarithms between sets, the exponent they all have. */
  readonly softness: number
  readonly scatter: number
  readonly exponent: number
  readonly loads: readonly number[]
  readonly repeats: number
  readonly noise: number
  readonly gaugeStep: number
  /** Whether the next set's interval is held to its level too: it is wide where noise makes up much of the scatter. */
  readonly nextSet: boolean
}

const designs: readonly Design[] = [
  {
    name: 'sets that differ',
    sets: [4, 8, 30],
    softness: 0.8 * mm,
    scatter: 0.3,
    exponent: 0.8,
    loads: [45, 85, 140, 220],
    repeats: 2,
    noise: 0.06 * mm,
    gaugeStep: 0.1 * mm,
    nextSet: true,
  },
  {
    name: 'sets nearly alike, loads alike: the shared exponent is the larger error',
    sets: [8, 30],
    softness: 0.8 * mm,
    scatter: 0.05,
    exponent: 0.8,
    loads: [180, 210, 250],
    repeats: 2,
    noise: 0.15 * mm,
    gaugeStep: 0.1 * mm,
    nextSet: false,
  },
]

const turfOf = (softness: number, exponent: number): Turf => ({ law: { kind: 'power', softness, exponent } })

function sinkageUnder(turf: Turf, load: number): number {
  const pressed = press({ roller: gaugeRoller, turf, load, condition: standing })
  if (pressed.outcome !== 'settled') throw new Error(pressed.outcome)
  return pressed.sinkage
}

function dropOn(turf: Turf): number {
  const settled = settle({ unit, turf, condition: standing })
  if (settled.outcome !== 'settled') throw new Error(settled.outcome)
  return settled.drop.middle
}

/** Softness of one set of the population. */
const drawn = ({ softness, scatter }: Design, random: Random) =>
  softness * Math.exp(scatter * random.normal())

function readingsOf(design: Design, sets: number, random: Random): Reading[] {
  const { loads, repeats, noise, gaugeStep, exponent } = design
  const readings: Reading[] = []
  for (let g = 0; g < sets; g++) {
    const turf = turfOf(drawn(design, random), exponent)
    for (const load of loads) {
      const deep = sinkageUnder(turf, load)
      for (let k = 0; k < repeats; k++) {
        const read = Math.round((deep + noise * random.normal()) / gaugeStep) * gaugeStep
        readings.push({
          row: readings.length + 2,
          set: `green ${g + 1}`,
          foot: { kind: 'roller', name: 'gauge' },
          load,
          measured: { kind: 'sinkage', sinkage: read },
          gaugeStep,
          count: 1,
        })
      }
    }
  }
  return readings
}

const DRAWS = 999
const TAIL = 0.025

/** The percentile bootstrap by itself, also where it is not offered, to show why. */
function percentiles({ estimates }: FittedSets, sets: number, seed: number): Interval {
  const random = randomFrom(seed)
  const logs = estimates.map(({ value }) => Math.log(value))
  const means = Float64Array.from({ length: DRAWS }, () => {
    let sum = 0
    for (let j = 0; j < sets; j++) sum += logs[random.integer(sets)]!
    return sum / sets
  }).sort()
  const end = (share: number) => Math.exp(means[Math.round(share * (DRAWS + 1)) - 1]!)
  return { kind: 'interval', low: end(TAIL), high: end(1 - TAIL), level: 1 - 2 * TAIL }
}

/** One study: how its intervals hold what is true of the population and of its next set. */
function study(design: Design, sets: number, seed: number, tally: Counted): void {
  const random = randomFrom(seed)
  const question: ComplianceQuestion = {
    readings: readingsOf(design, sets, random),
    law: 'power',
    free: [{ name: 'softness', per: 'set' }, 'exponent'],
    noise: { kind: 'estimated' },
    scenario: { unit, rollers: { gauge: gaugeRoller } },
  }
  const next = drawn(design, random)
  const fit = fitCompliance(question)
  if (fit.outcome !== 'converged') {
    tally.lost(fit.why)
    return
  }
  const bootstrap = { draws: DRAWS, seed }
  const softness = acrossFittedSets({ question, fit, of: 'softness', bootstrap })
  const drop = acrossFittedSets({ question, fit, of: { from: dropOn, scale: 'ratio' }, bootstrap })
  const median = turfOf(design.softness, design.exponent)
  const of = (what: string, found: FittedSets, truth: number, nextTruth: number) => {
    const add = (kind: string, interval: Interval | undefined, value: number, held: boolean) =>
      tally.add({ what, kind, interval, truth: value, held })
    add('t over sets', found.interval, truth, true)
    add('studentised bootstrap', found.studentised?.interval, truth, true)
    add('percentile bootstrap', percentiles(found, sets, seed), truth, false)
    add('next set', found.newSet, nextTruth, design.nextSet)
  }
  of('softness', softness, design.softness, next)
  // The height is the bench height less the drop: an interval of one is an interval of the other.
  of('height', drop, dropOn(median), dropOn(turfOf(next, design.exponent)))
}

const STUDIES = 1000
const asked = process.argv.indexOf('--studies')
const studies = asked < 0 ? STUDIES : Number(process.argv[asked + 1])
const began = performance.now()
const tallies = designs.flatMap((design, d) =>
  design.sets.map(sets => {
    const tally = counted(`${design.name}; ${sets} sets`)
    for (let k = 0; k < studies; k++) study(design, sets, 1_000_000 * (d + 1) + 10_000 * sets + k, tally)
    return tally
  }),
)
const { text, outside } = report(tallies, studies)
process.stdout.write(`${text}\n${((performance.now() - began) / 1e3).toFixed(0)} s\n`)
process.exitCode = outside > 0 ? 1 : 0
