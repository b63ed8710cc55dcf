import { describe, expect, test } from 'vitest'
import { randomFrom } from '../../../../packages/model/src/numerics/index.ts'
import { normalityOf } from '../../../../packages/model/src/study/fit/judge/normality.ts'
import { residualDiagnostics } from '../../../../packages/model/src/study/fit/judge/residualDiagnostics.ts'
import { runsOf } from '../../../../packages/model/src/study/fit/judge/runs.ts'
import { loadCell, stoppingDistances } from '../../../support/publishedReadings.ts'
import { expectNear, expectPrinted, stated } from '../../../support/tolerance.ts'
import { fittedLine } from './fittedLine.ts'

const one = () => 1
const itself = (x: number) => x
const { speeds, distances } = stoppingDistances
const stops = fittedLine({
  rows: speeds.map(along => ({ along })),
  measured: distances,
  terms: [one, itself],
})

describe('published values', () => {
  test('row 49 of the stopping distances: Cook 0.3404, deleted residual 3.184993 (R manual, from memory)', () => {
    const { residuals } = residualDiagnostics(stops)
    expectPrinted(residuals[48]!.cook!, '0.3404')
    expectPrinted(residuals[48]!.deleted!, '3.184993')
    expectPrinted(stops.fit.residualStandardDeviation!, '15.38')
  })

  test('six runs or fewer among ten and ten come 19 times in a thousand (Swed and Eisenhart 1943, from memory)', () => {
    const signs = [1, 1, 1, 1, -1, -1, -1, -1, 1, 1, 1, -1, -1, -1, 1, 1, 1, -1, -1, -1]
    const found = runsOf(signs)!
    expect([found.above, found.below, found.runs, found.expected]).toEqual([10, 10, 6, 11])
    expectPrinted(found.probability, '0.019')
  })
})

// Cook 1977, Technometrics 19:15-18; Belsley, Kuh and Welsch 1980, Regression Diagnostics (from memory).
describe('Cook’s distance and deleted residuals', () => {
  test('are what leaving each row out does', () => {
    const { residuals } = residualDiagnostics(stops)
    const p = 2
    const estimates = stops.fit.parameters.map(({ value }) => value)
    const variance = stops.fit.residualStandardDeviation! ** 2
    speeds.forEach((speed, i) => {
      const others = speeds.flatMap((along, k) => (k === i ? [] : [{ along }]))
      const without = fittedLine({
        rows: others,
        measured: distances.filter((_, k) => k !== i),
        terms: [one, itself],
      })
      const [a, b] = without.fit.parameters.map(({ value }) => value)
      const moved = speeds.reduce((sum, x) => sum + (estimates[0]! - a! + (estimates[1]! - b!) * x) ** 2, 0)
      expectNear(residuals[i]!.cook!, moved / (p * variance), stated(1e-7), `row ${i + 1}`)
      const s = without.fit.residualStandardDeviation!
      const gap = distances[i]! - a! - b! * speed
      const spread = s / Math.sqrt(1 - stops.fit.leverage[i]!)
      expectNear(residuals[i]!.deleted!, gap / spread, stated(1e-7), `row ${i + 1}`)
    })
  })
})

describe('suspicious rows', () => {
  const along = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10]
  const wobble = [0.1, -0.05, 0.02, -0.12, 0.06, -0.02, 0.09, -0.1, 0.03, -0.01]
  const flagged = (measured: readonly number[], at = along) =>
    residualDiagnostics(fittedLine({ rows: at.map(x => ({ along: x })), measured, terms: [one, itself] }))

  test('are none where all is well', () => {
    expect(flagged(along.map((x, i) => x + wobble[i]!)).suspicious).toEqual([])
  })

  test('are told with the reason, and stay in', () => {
    const found = flagged(along.map((x, i) => x + wobble[i]! + (i === 4 ? 1.4 : 0)))
    expect(found.suspicious.map(({ row }) => row)).toEqual([5])
    expect(found.suspicious[0]!.suspicions.map(({ kind }) => kind)).toContain('far off')
    expect(found.sentences[0]).toMatch(
      /^Row 5: it lies [\d.]+ standard deviations above the curve; .*It is left in\.$/,
    )
    expect(found.residuals).toHaveLength(10)
  })

  test('of a load far from all others stand alone, whatever they say', () => {
    const at = along.map((x, i) => (i === 9 ? 100 : x))
    const found = flagged(
      at.map((x, i) => x + wobble[i]! + (i === 9 ? 8 : 0)),
      at,
    )
    const last = found.suspicious.find(({ row }) => row === 10)!
    expect(last.suspicions.map(({ kind }) => kind)).toContain('stands alone')
    expect(last.suspicions.map(({ kind }) => kind)).toContain('pulls the fit')
  })

  test('without a scatter to measure by are not made up', () => {
    const exact = flagged(along.slice(0, 2), along.slice(0, 2))
    expect(exact.residuals.map(({ standardised }) => standardised)).toEqual([null, null])
    expect(exact.alongLoad).toBeNull()
    expect(exact.sentences).toEqual([])
  })
})

describe('trends', () => {
  const line = fittedLine({
    rows: loadCell.loads.map(along => ({ along })),
    measured: loadCell.deflections,
    terms: [one, x => x / 1e6],
  })
  const parabola = fittedLine({
    rows: loadCell.loads.map(along => ({ along })),
    measured: loadCell.deflections,
    terms: [one, x => x / 1e6, x => (x / 1e6) ** 2],
  })

  test('a line through what bends leaves a bow of signs along the load', () => {
    const { alongLoad, sentences } = residualDiagnostics(line)
    expect(alongLoad!.pattern.replaceAll(' ', '')).toMatch(/^−+·*\++·*−+$/)
    expect(alongLoad!.places).toBe(20)
    expect(alongLoad!.runs!.probability).toBeLessThan(0.01)
    expect(alongLoad!.test.kind === 'tested' && alongLoad!.test.probability).toBeLessThan(1e-6)
    expect(sentences.some(text => text.includes('the residuals bend'))).toBe(true)
  })

  test('a parabola leaves none', () => {
    const { sentences } = residualDiagnostics(parabola)
    expect(sentences.filter(text => text.includes('bend'))).toEqual([])
  })

  test('the F of a bend is that of fitting it', () => {
    const logs = loadCell.loads.map(Math.log)
    const middle = logs.reduce((sum, l) => sum + l, 0) / logs.length
    const bowed = fittedLine({
      rows: loadCell.loads.map(along => ({ along })),
      measured: loadCell.deflections,
      terms: [one, x => x / 1e6, x => Math.log(x) - middle, x => (Math.log(x) - middle) ** 2],
    })
    const found = residualDiagnostics(line).alongLoad!.test
    if (found.kind !== 'tested') return expect.fail(found.why)
    const gain = line.fit.sumOfSquares - bowed.fit.sumOfSquares
    expectNear(found.ratio, gain / 2 / (bowed.fit.sumOfSquares / 36), stated(1e-6))
    expect([found.above, found.below]).toEqual([2, 36])
  })

  test('are called by chance one time in twenty', () => {
    const random = randomFrom(14)
    const loads = Array.from({ length: 16 }, (_, i) => 2 + (i % 8))
    const tries = 2000
    const called = { bend: 0, drift: 0, suspicious: 0 }
    for (let k = 0; k < tries; k++) {
      const fit = fittedLine({
        rows: loads.map(along => ({ along })),
        measured: loads.map(x => x + random.normal()),
        terms: [one, itself],
      })
      const { alongLoad, inOrder, suspicious } = residualDiagnostics(fit)
      if (alongLoad!.test.kind === 'tested' && alongLoad!.test.probability < 0.05) called.bend++
      if (inOrder!.test.kind === 'tested' && inOrder!.test.probability < 0.05) called.drift++
      if (suspicious.length > 0) called.suspicious++
    }
    // the standard deviation of such a rate is 0.005
    expect(Math.abs(called.bend / tries - 0.05), `${called.bend}`).toBeLessThan(0.017)
    expect(Math.abs(called.drift / tries - 0.05), `${called.drift}`).toBeLessThan(0.017)
    expect(called.suspicious / tries).toBeLessThan(0.12)
  })

  test('a zero that creeps shows in the order of reading', () => {
    const random = randomFrom(11)
    const loads = Array.from({ length: 40 }, (_, i) => 10 + ((7 * i) % 13))
    const measured = loads.map((x, i) => x + 0.004 * i + 0.03 * random.normal())
    const found = residualDiagnostics(
      fittedLine({ rows: loads.map(along => ({ along })), measured, terms: [one, itself] }),
    )
    expect(found.sentences.some(text => text.includes('drift'))).toBe(true)
  })

  // The exact probability of so few runs: Wald and Wolfowitz 1940 (from memory).
  test('runs agree with counting every order of five and four signs', () => {
    const orders: number[][] = []
    for (let bits = 0; bits < 512; bits++) {
      const signs = Array.from({ length: 9 }, (_, i) => ((bits >> i) & 1 ? 1 : -1))
      if (signs.filter(sign => sign > 0).length === 5) orders.push(signs)
    }
    const all = orders.map(signs => runsOf(signs)!)
    for (const { runs, probability } of all)
      expectNear(probability, all.filter(other => other.runs <= runs).length / orders.length, stated(1e-11))
  })
})

describe('normality, a hint', () => {
  const draws = (count: number, of: () => number) => Array.from({ length: count }, of)

  // Percentage points of W′: Royston 1993, The Statistician 42:37-43 (from memory).
  test('calls normal numbers crooked one time in twenty', () => {
    const random = randomFrom(5)
    for (const n of [10, 25, 80]) {
      const rare = draws(4000, () => 0).filter(() => {
        const found = normalityOf(draws(n, random.normal))
        return found.kind === 'tested' && found.probability < 0.05
      }).length
      // 4,000 tries: the standard deviation of the rate is 0.0034
      expect(Math.abs(rare / 4000 - 0.05), `${n} numbers: ${rare}`).toBeLessThan(0.012)
    }
  })

  test('sees that exponential scatter is not normal', () => {
    const random = randomFrom(6)
    const found = normalityOf(draws(60, () => -Math.log(1 - random.uniform())))
    expect(found.kind === 'tested' && found.probability).toBeLessThan(0.01)
  })

  test('says so when there are too few, or all are alike', () => {
    expect(normalityOf([1, 2, 3]).kind).toBe('not tested')
    expect(normalityOf(draws(20, () => 1)).kind).toBe('not tested')
  })
})
