import {
  type ComplianceFit,
  type ComplianceQuestion,
  fitCompliance,
  pressColumn,
  type Reading,
  resampleFit,
} from '@swardsink/model'
import { leastSquares } from '../../packages/model/src/numerics/index.ts'
import { residualsOf, setUp } from '../../packages/model/src/study/fit/compliance/setUp.ts'
import { even, evenly, mm, smooth, standing, unit } from './cases.ts'
import { type Row, timed } from './measure.ts'
import { type Peers, peerSide } from './peers.ts'
import { fitted } from './straightforward/fitted.ts'
import { sinkageUnder } from './straightforward/side.ts'

/** Invented readings: turf of softness 0.55 mm that locks at 5.5 mm, the gauge's zero 0.1 mm off, even scatter. */
function questionOf(count: number): ComplianceQuestion {
  const loads = evenly(80, 600, count)
  const law = { kind: 'stiffening', softness: 0.55 * mm, lockingDepth: 5.5 * mm } as const
  const { sinkages } = pressColumn({ roller: smooth, turf: { law }, condition: standing, loads })
  const readings = Array.from(
    loads,
    (load, i): Reading => ({
      row: i + 1,
      set: 'green',
      foot: { kind: 'roller', name: 'smooth' },
      load,
      measured: {
        kind: 'sinkage',
        sinkage: sinkages[i]! + 0.1 * mm + 0.06 * mm * (even(i, 0) + even(i, 1) + even(i, 2) - 1.5),
      },
      count: 1,
    }),
  )
  return {
    readings,
    law: 'stiffening',
    free: ['softness', 'lockingDepth'],
    noise: { kind: 'estimated' },
    datum: 'per set',
    scenario: { unit, rollers: { smooth } },
  }
}

const softnessIn = (fit: ReturnType<typeof fitCompliance>): number =>
  fit.parameters.find(({ name }) => name === 'softness')!.value

/** Least squares through the model alone: what scipy's is set against. */
function kernelOf(count: number) {
  const made = setUp(questionOf(count))
  const { measured, weights, start, lower, upper, scale } = made
  return () => leastSquares({ residuals: residualsOf(made, measured, weights), start, lower, upper, scale })
}

const FITS = 10

function plainFit(count: number) {
  const { readings } = questionOf(count)
  const loads = readings.map(({ load }) => load!)
  const read = readings.map(({ measured }) => (measured.kind === 'sinkage' ? measured.sinkage : 0))
  const model = (load: number, [s = 0, H = 0, datum = 0]: readonly number[]) =>
    datum +
    sinkageUnder(
      z => (10e3 * (1 / s - 1 / H) * z) / (1 - z / H),
      { radius: smooth.diameter / 2, length: smooth.length },
      load,
      0.99 * H,
    )
  return () => fitted(model, loads, read, [0.8 * mm, 8 * mm, 0.01 * mm])
}

const rowsFor = (count: number, { scipy }: Peers): Row[] => {
  const question = questionOf(count)
  const kernel = kernelOf(count)
  const plain = plainFit(count)
  return [
    {
      name: `kernel: least squares through the model, ${count} readings`,
      per: 'fit',
      by: {
        ours: timed(() => {
          let value = 0
          for (let i = 0; i < FITS; i++) value = Math.exp(kernel().p[0]!)
          return { pieces: FITS, value }
        }),
        ...(count === 60 ? { plain: timed(() => ({ pieces: 1, value: plain()[0]! })) } : {}),
        ...peerSide('scipy', scipy, `fit ${count}`),
      },
      ...(count === 200 ? { bar: { most: 0.2, of: 'scipy' } as const } : {}),
      counts: () => {
        const { iterations, evaluations } = kernel()
        return `${iterations} iterations, ${evaluations} evaluations`
      },
    },
    {
      name: `fitCompliance, ${count} readings, all it tells`,
      per: 'fit',
      by: {
        ours: timed(() => {
          let value = 0
          for (let i = 0; i < FITS; i++) value = softnessIn(fitCompliance(question))
          return { pieces: FITS, value }
        }),
        ...peerSide('scipy', scipy, `fit ${count}`),
      },
    },
  ]
}

const REFITS = 2000

export function fitRows(peers: Peers): readonly Row[] {
  const question = questionOf(200)
  const fit = fitCompliance(question) as ComplianceFit
  return [
    ...[60, 200, 500].flatMap(count => rowsFor(count, peers)),
    {
      name: `${REFITS} bootstrap refits of 200 readings`,
      per: 'refit',
      by: {
        ours: timed(() => ({
          pieces: resampleFit({ question, fit, resample: 'residuals', seed: 1, draws: REFITS }).values.length,
        })),
      },
    },
  ]
}
