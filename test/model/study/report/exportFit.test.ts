import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type ComplianceFit, type ExportLanguage, exportFit, fitCompliance } from '@swardsink/model'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { expectNear, ofSize, stated } from '../../../support/tolerance.ts'
import { fitted, readingsOf, SETS, scenario } from './fittedExamples.ts'

/** What runs a script here, if anything does. */
const programs: Readonly<
  Record<ExportLanguage, { command: string; ending: string; probe: readonly string[] }>
> = {
  Python: { command: 'python3', ending: 'py', probe: ['-c', 'import numpy, scipy.optimize'] },
  // Central differences in nls came with R 4.1.
  R: { command: 'Rscript', ending: 'R', probe: ['-e', 'stopifnot(getRversion() >= "4.1")'] },
}
const runs = (language: ExportLanguage): boolean => {
  const { command, probe } = programs[language]
  return spawnSync(command, probe).status === 0
}

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'Ellerby Höllow '))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function scriptOf(fit: ComplianceFit, language: ExportLanguage): string {
  const made = exportFit({ fit, language, scenario, name: 'an invented\ntable' })
  return made.kind === 'script' ? made.text : expect.fail(made.why)
}

/** Rows of numbers that a script prints: value, standard error, low, high. */
function printedBy(language: ExportLanguage, text: string): readonly (readonly number[])[] {
  const { command, ending } = programs[language]
  const file = join(folder, `fit.${ending}`)
  writeFileSync(file, text)
  const { status, stdout, stderr } = spawnSync(command, [file], { encoding: 'utf8' })
  expect([status, stderr]).toEqual([0, ''])
  return stdout
    .trim()
    .split('\n')
    .slice(1)
    .filter(line => !line.startsWith('#'))
    .map(line => line.split(',').slice(-4).map(Number))
}

const per = (name: string) => ({ name, per: 'set' as const })
const mixed = ['smooth', 'ridged', { plate: 0.05 }] as const
const fits: Readonly<Record<string, () => ComplianceFit>> = {
  'the linear law under plates of two sizes, with spread': () =>
    fitted({
      law: { kind: 'linear', softness: 0.5e-3 },
      spread: 2e-3,
      feet: [{ plate: 0.05 }, { plate: 0.02 }],
      free: ['softness', 'spread'],
      noise: { kind: 'known', standardDeviation: 0.03e-3 },
    }),
  'the power law under rollers and plates, a softness a set': () =>
    fitted({
      law: { kind: 'power', softness: 0.4e-3, exponent: 0.8 },
      feet: mixed,
      free: [per('softness'), 'exponent'],
      noise: { kind: 'estimated' },
    }),
  'the linear law under rollers, from an unknown zero': () =>
    fitted({
      law: { kind: 'linear', softness: 0.5e-3 },
      feet: ['smooth', 'ridged'],
      free: ['softness'],
      noise: { kind: 'estimated' },
      datum: 'per set',
    }),
  'the stiffening law under rollers and plates': () =>
    fitted({
      law: { kind: 'stiffening', softness: 0.3e-3, lockingDepth: 4e-3 },
      feet: mixed,
      free: ['softness', 'lockingDepth'],
      noise: { kind: 'known', standardDeviation: 0.03e-3 },
    }),
  'the logarithmic law under rollers and plates, each set its own': () =>
    fitted({
      law: { kind: 'logarithmic', softness: 0.3e-3, lockingDepth: 3e-3 },
      feet: mixed,
      free: [per('softness'), per('lockingDepth')],
      noise: { kind: 'estimated' },
    }),
}

// What exportFit says of its scripts.
const digits = stated(1e-6)

describe.each(['Python', 'R'] as const)('a script of %s', language => {
  const here = runs(language)
  const how = here ? 'repeats the fit' : 'cannot be run here, but holds every reading'

  test.each(Object.entries(fits))(`${how}: %s`, (_, make) => {
    const fit = make()
    const text = scriptOf(fit, language)
    for (const { measured } of fit.readings) expect(text).toContain(String(measured))
    if (!here) return
    const printed = printedBy(language, text)
    const free = fit.parameters.filter(({ state }) => state === 'free')
    expect(printed).toHaveLength(free.length)
    free.forEach(({ name, value, standardError, interval }, i) => {
      const [its, deviation, low, high] = printed[i]!
      const size = ofSize(Math.max(Math.abs(value), standardError ?? 0), digits)
      expectNear(its!, value, size, name)
      expectNear(deviation!, standardError ?? Number.NaN, digits, name)
      const ends = interval.kind === 'interval' ? interval : expect.fail(interval.why)
      expectNear(low!, ends.low, size, name)
      expectNear(high!, ends.high, size, name)
    })
  })

  test('begins elsewhere than where it ends', () => {
    const fit = fits['the power law under rollers and plates, a softness a set']!()
    const text = scriptOf(fit, language)
    for (const { value, state } of fit.parameters)
      if (state === 'free') expect(text).not.toContain(String(value))
  })

  test('is plain ASCII, and its comments cannot be broken out of', () => {
    const text = scriptOf(fits['the power law under rollers and plates, a softness a set']!(), language)
    expect([...text].filter(letter => letter.charCodeAt(0) > 126 && letter !== '§')).toEqual([])
    expect(text.split('\n')[0]).toContain('an invented table')
  })
})

describe('where no script can repeat a fit, the table of what it was made of says why', () => {
  const linear = { kind: 'linear', softness: 0.5e-3 } as const
  const spreading = () =>
    fitted({
      law: linear,
      spread: 2e-3,
      feet: ['smooth', { plate: 0.05 }],
      free: ['softness', 'spread'],
      noise: { kind: 'estimated' },
    })
  const whole = () => {
    const readings = readingsOf({ law: linear }, ['smooth', 'ridged']).map(reading => ({
      ...reading,
      measured: { kind: 'drop' as const, drop: 1e-3 * reading.row, point: 0.5 },
    }))
    const fit = fitCompliance({
      readings: readings.map(({ load: _, ...rest }) => rest),
      law: 'linear',
      free: ['softness'],
      noise: { kind: 'estimated' },
      scenario,
    })
    return fit.outcome === 'failed' ? expect.fail(fit.why) : fit
  }
  const plain = () =>
    fitted({ law: linear, feet: ['smooth'], free: ['softness'], noise: { kind: 'estimated' } })

  test.each([
    ['rollers with spread', spreading, {}, /a roller on turf that spreads load/],
    ['drops of the whole unit', whole, {}, /asks for its balance/],
    ['a robust loss', plain, { robust: true }, /robust loss/],
    ['rollers that are not at hand', plain, { scenario: undefined }, /the scenario with its rollers/],
    [
      'a search that stopped',
      () => ({ ...plain(), outcome: 'stopped' as const }),
      {},
      /did not end at a minimum/,
    ],
    ['a law of layers', () => ({ ...plain(), law: 'layered' as const }), {}, /the layered law/],
  ])('%s', (_, make, changed, why) => {
    const fit = make()
    const question = { fit, language: 'R', scenario, ...changed } as Parameters<typeof exportFit>[0]
    const made = exportFit(question)
    if (made.kind !== 'table') return expect.fail('a script')
    expect(made.why).toMatch(why)
    const rows = made.text.trim().split('\n')
    expect(rows[1]).toContain(made.why)
    expect(rows).toHaveLength(3 + fit.readings.length)
    expect(made.text).toContain(`"${SETS[1].replaceAll('"', '""')}"`.slice(0, 8))
    const last = rows.at(-1)!.split(',').slice(-4).map(Number)
    expectNear(last[0]! - last[1]!, fit.residuals.at(-1) ?? Number.NaN, ofSize(1e-3, stated(1e-12)))
  })
})
