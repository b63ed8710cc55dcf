import { parameterQuantity, type Reading, type Scenario } from '@swardsink/model'
import { isRecord, type Kind, type LiveValue } from '../../book/index.ts'
import { type FitResult, fitted } from './fitted.ts'
import { type FitQuestion, questionOf } from './question.ts'
import { type FitSettings, readSettings } from './settings.ts'

export type { FitResult, Fitted, Judged } from './fitted.ts'
export type { FitSettings } from './settings.ts'

export type FitInput = {
  readonly readings: readonly Reading[]
  readonly question: FitQuestion
  readonly set: string
  readonly foot: string
  readonly compare: boolean
  /** Whose height the next reading is to narrow; null while nobody asks. */
  readonly nextFor: Pick<Scenario, 'unit' | 'rollers' | 'condition'> | null
}

/** Plates without spread are fitted within a frame, if they are few; everything else is the worker's. */
const FEW_READINGS = 40
const FEW_NUMBERS = 8

function isQuick({ readings, question }: FitInput): boolean {
  const sets = new Set(readings.map(({ set }) => set)).size
  const numbers = question.free.reduce((sum, free) => sum + (typeof free === 'string' ? 1 : sets), 0)
  const spreads = question.start?.spread !== 0
  return (
    readings.length <= FEW_READINGS &&
    numbers <= FEW_NUMBERS &&
    !spreads &&
    readings.every(({ foot, load }) => foot.kind === 'plate' || load !== undefined)
  )
}

const fittable = new WeakMap<readonly Reading[], readonly Reading[]>()

/** Heights after a test strip are checked, never fitted. The same list for the same answer: a long one is known by itself. */
function readingsOf(answer: unknown): readonly Reading[] {
  if (!isRecord(answer) || !Array.isArray(answer.readings)) return []
  // Only an entry of readings is needed by a fit, and this is what it answers.
  const all = answer.readings as readonly Reading[]
  let found = fittable.get(all)
  if (!found) {
    found = all.filter(({ measured }) => measured.kind !== 'height')
    fittable.set(all, found)
  }
  return found
}

const noQuestion = { outcome: 'none', reason: 'no readings', why: '' } as const

/** A number of the fit by its name: what all sets share, or of the set that is drawn. */
function offered(result: FitResult): Readonly<Record<string, LiveValue>> {
  if (result.outcome === 'none') return {}
  const { fit, curve } = result
  const own = fit.parameters.filter(({ set }) => set === undefined || set === curve.set)
  const numbers = own.map(({ name, value }): [string, LiveValue] => {
    const quantity = parameterQuantity(name)
    return [name, quantity ? { quantity, value } : { unit: '', value }]
  })
  const scatter = fit.noise === 'estimated' ? fit.residualStandardDeviation : null
  return {
    ...Object.fromEntries(numbers),
    scatter: { quantity: 'sinkage', value: scatter },
    readings: { quantity: 'count', value: fit.readings.length },
  }
}

/** The turf found from readings, and how sure that is. */
export const fit: Kind<'fit', FitSettings, FitInput, FitResult> = {
  kind: 'fit',
  read: readSettings,
  whenAdded: ({ entries }) => {
    const found = entries.find(({ kind }) => kind === 'readings')
    return found ? { readings: found.id } : {}
  },
  problems: ({ readings }, _, entries) =>
    readings === '' || entries.some(({ id, kind }) => id === readings && kind === 'readings')
      ? []
      : [{ path: 'readings', expected: 'the name of an entry with readings', received: readings }],
  needs: ({ readings }, entries) => (entries.some(({ id }) => id === readings) ? [readings] : []),
  input({ settings, scenario, answers }) {
    const readings = readingsOf(answers[settings.readings])
    const { unit, rollers, condition } = scenario
    return {
      readings,
      question: questionOf(settings, { readings, scenario }),
      set: settings.set,
      foot: settings.foot,
      compare: settings.compare,
      nextFor: settings.next ? { unit, rollers, condition } : null,
    }
  },
  compute(input) {
    if (input.readings.length === 0)
      return { outcome: 'answered', result: noQuestion, cautions: [], whole: true }
    if (!isQuick(input)) return { outcome: 'later' }
    const result = fitted(input, { draft: true })
    const cautions = result.outcome === 'fitted' ? result.fit.cautions : []
    return { outcome: 'answered', result, cautions, ...(result.outcome === 'none' ? { whole: true } : {}) }
  },
  refine(input, onStep) {
    const result = fitted(input, { draft: false, onStep })
    onStep(1)
    return { outcome: 'answered', result, cautions: result.outcome === 'fitted' ? result.fit.cautions : [] }
  },
  offers: offered,
  workedOut({ result, format }) {
    if (result.outcome === 'none') return []
    const { fit: found, curve } = result
    const softness = found.parameters.find(
      ({ name, set }) => name === 'softness' && (set === undefined || set === curve.set),
    )
    const scatter = found.noise === 'estimated' ? found.residualStandardDeviation : null
    return [
      {
        what: 'fitLeast',
        equation: 'Σ w_i (z_i − z(W_i; θ) − d)² → least',
        filled: `n = ${found.readings.length}, ${found.readings.length - found.degreesOfFreedom} free; in ${found.iterations} steps`,
      },
      ...(softness
        ? [
            {
              what: 'fitSoftness',
              equation: 's, var ln s = σ² [(JᵀWJ)⁻¹]_ss',
              filled: `s = ${format(softness.value, 'softness')}${softness.standardError === null ? '' : `, standard error ${(softness.standardError * 1e6).toFixed(1)} µm`}`,
            },
          ]
        : []),
      ...(scatter === null
        ? []
        : [
            {
              what: 'fitScatter',
              equation: 's² = Σ w_i r_i²/(n − p)',
              filled: `s = ${format(scatter, 'sinkage')} on ${found.degreesOfFreedom}`,
            },
          ]),
    ]
  },
  section: '§7',
  check: 'test/explorer/entries/fit.test.ts',
}
