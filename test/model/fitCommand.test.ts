import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fitCompliance, readScenario, readTable, type Scenario } from '@swardsink/model'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { repository } from '../support/files.ts'
import { buildStale } from '../support/servedPage.ts'

const program = join(repository, 'packages/model/bin/swardsink.js')
const example = (name: string) => join(repository, 'docs/examples', name)
const [plates, rollers, drops, unit] = ['plates.csv', 'rollers.csv', 'drops.csv', 'ellerby-hollow.json'].map(
  example,
) as [string, string, string, string]

let folder: string
let scenario: Scenario
beforeAll(async () => {
  await buildStale('model')
  folder = mkdtempSync(join(tmpdir(), 'Ellerby Höllow '))
  const reading = await readScenario(JSON.parse(readFileSync(unit, 'utf8')))
  scenario = reading.ok ? reading.scenario : expect.fail(JSON.stringify(reading.problems))
}, 120_000)
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function saved(name: string, content: string | Buffer): string {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}

function run(words: readonly string[], input?: string) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, 'fit', ...words], {
    encoding: 'utf8',
    ...(input === undefined ? {} : { input }),
  })
  return { status, stdout, stderr }
}

const readingsIn = (file: string) => {
  const table = readTable(readFileSync(file, 'utf8'))
  return table.ok ? table.readings : expect.fail(JSON.stringify(table.problems))
}
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value))
const per = (name: string) => ({ name, per: 'set' as const })

describe('answers', () => {
  test('a table gives a paragraph and its numbers', () => {
    const { status, stdout, stderr } = run([plates, '--per-set', 'softness', '--free', 'exponent'])
    expect([status, stderr]).toEqual([0, ''])
    expect(stdout).toContain('30 readings in 2 sets with plates, fitted with the power law')
    expect(stdout).toMatch(/^softness +nursery green +mm +0\.9\d+ /m)
    expect(stdout.replaceAll('\n', ' ')).toContain('scatter was taken from the residuals')
    expect(stdout).not.toContain('Methods')
  })

  test('--json is what the library answers', () => {
    const fit = fitCompliance({
      readings: readingsIn(plates),
      law: 'power',
      free: ['exponent', per('softness')],
      noise: { kind: 'estimated' },
    })
    const { stdout } = run([plates, '--free', 'exponent', '--per-set', 'softness', '--json'])
    expect(JSON.parse(stdout)).toEqual(plain(fit))
  })

  test('all numbers of the law are free unless some are named or held', () => {
    const all = { readings: readingsIn(plates), law: 'power', noise: { kind: 'estimated' } } as const
    const both = fitCompliance({ ...all, free: ['softness', 'exponent'] })
    expect(JSON.parse(run([plates, '--json']).stdout)).toEqual(plain(both))
    const one = fitCompliance({ ...all, free: ['softness'], start: { exponent: 0.9, spread: 1.5e-3 } })
    expect(JSON.parse(run([plates, '--hold', 'exponent=0.9,spread=1.5mm', '--json']).stdout)).toEqual(
      plain(one),
    )
  })

  test('noise is known where every reading says its own, and the report says so', () => {
    const words = [rollers, '--scenario', unit]
    const { stdout } = run([...words, '--json'])
    expect(JSON.parse(stdout)).toMatchObject({ noise: 'known' })
    expect(run(words).stdout.replaceAll('\n', ' ')).toContain('scatter of a reading was known beforehand')
    expect(JSON.parse(run([...words, '--noise', 'estimated', '--json']).stdout)).toMatchObject({
      noise: 'estimated',
    })
  })

  test('noise may be told, in millimetres or inches', () => {
    const withNoise = (standardDeviation: number) =>
      plain(
        fitCompliance({
          readings: readingsIn(plates),
          law: 'linear',
          free: ['softness'],
          noise: { kind: 'known', standardDeviation },
          level: 0.9,
        }),
      )
    const words = [plates, '--law', 'linear', '--json', '--level', '0.9']
    expect(JSON.parse(run([...words, '--noise', '0.05mm']).stdout)).toEqual(withNoise(0.05 * 1e-3))
    expect(JSON.parse(run([...words, '--noise', '0.002in']).stdout)).toEqual(withNoise(0.002 * 0.0254))
  })

  test('--datum takes the zero of each set as unknown', () => {
    const { parameters } = JSON.parse(run([plates, '--datum', '--json']).stdout) as {
      parameters: { name: string; set?: string }[]
    }
    expect(parameters.filter(({ name }) => name === 'datum').map(({ set }) => set)).toEqual([
      'orchard green',
      'nursery green',
    ])
  })

  test('drops of the whole unit on the law of a turf of the scenario', () => {
    const law = 'orchard green (invented)'
    const words = [drops, '--scenario', unit, '--law', law, '--per-set', 'softness', '--json']
    const turf = scenario.turfs[law]!
    const fit = fitCompliance({
      readings: readingsIn(drops),
      law: turf.law,
      free: [per('softness')],
      noise: { kind: 'estimated' },
      start: { spread: turf.spread! },
      scenario,
    })
    expect(JSON.parse(run(words).stdout)).toEqual(plain(fit))
  })

  test('several tables give a line each, and a list as data', () => {
    const words = [plates, rollers, '--scenario', unit]
    const { status, stdout } = run(words)
    expect(status).toBe(0)
    const lines = stdout.trim().split('\n')
    expect(lines).toHaveLength(4)
    expect(lines[2]).toMatch(/plates\.csv +30 +2 +0\.\d\d +0\.\d\d +estimated/)
    expect(lines[3]).toMatch(/rollers\.csv +23 +2 .*known/)
    const list = JSON.parse(run([...words, '--json']).stdout) as { file: string; fit: unknown }[]
    expect(list.map(({ file }) => file)).toEqual([plates, rollers])
    expect(list[0]?.fit).toEqual(JSON.parse(run([plates, '--json']).stdout))
  })

  test('--report adds the methods, for every table', () => {
    expect(run([plates, '--report']).stdout).toContain('\nMethods\nTurf was described by the power law')
    const { stdout } = run([plates, rollers, '--scenario', unit, '--report'])
    expect(stdout.split('\nMethods\n')).toHaveLength(3)
  })

  test('- reads standard input, in whatever a spreadsheet saves', () => {
    const text = readFileSync(plates, 'utf8')
    const fit = run([plates, '--json']).stdout
    expect(run(['-', '--json'], text).stdout).toBe(fit)
    expect(run(['-', '--json'], `\uFEFF${text.replaceAll('\n', '\r\n')}`).stdout).toBe(fit)
    const wide = saved('wide.csv', Buffer.from(`\uFEFF${text}`, 'utf16le'))
    expect(run([wide, '--json']).stdout).toBe(fit)
  })

  test('what was read with a doubt is noted, a few of a kind', () => {
    const deep = saved(
      'deep.csv',
      `load_kg,sinkage_mm,plate_diameter_mm\n${[20, 21, 22, 23, 24].map(z => `${z},${z},100`).join('\n')}`,
    )
    const { status, stderr } = run([deep])
    expect(status).toBe(0)
    const notes = stderr.trim().split('\n')
    expect(notes).toHaveLength(4)
    expect(notes[0]).toBe('note: row 2, sinkage_mm: expected at most about 15 mm, received 20')
    expect(notes[3]).toBe('note: sinkage_mm: 2 more like these')
  })

  test('an export is written beside the answer, or in its place', () => {
    const [script, python] = [join(folder, 'fit.R'), join(folder, 'fit.py')]
    const { status, stdout } = run([plates, '--export', 'R', script, '--export', 'python', python])
    expect(status).toBe(0)
    expect(stdout).toContain('30 readings')
    expect(readFileSync(script, 'utf8')).toContain('nls(')
    expect(readFileSync(python, 'utf8')).toContain('least_squares')
    expect(run([plates, '--export', 'R', '-']).stdout).toBe(readFileSync(script, 'utf8'))
  })

  test('where no script can repeat it, the export is a table and a note says why', () => {
    const file = join(folder, 'drops.R')
    const { status, stderr } = run([drops, '--scenario', unit, '--law', 'linear', '--export', 'R', file])
    expect(status).toBe(0)
    expect(stderr).toContain(
      'holds the readings beside their fitted values, no script: a drop of the whole unit',
    )
    expect(readFileSync(file, 'utf8')).toContain(
      'row,set,kind,foot,load_N,measured_m,fitted_m,residual_m,weight',
    )
  })
})

describe('input at fault: exit code 1, nothing on standard output', () => {
  test('every problem of every table, with its file', () => {
    const bad = saved('bad.csv', 'plate_diameter_mm,load_N,sinkage_mm\n50,-3,0.4\n50,x,0.5\n')
    const worse = saved('worse.csv', 'set;load\nA;3\n')
    const { status, stdout, stderr } = run([bad, plates, worse, join(folder, 'nowhere.csv')])
    expect([status, stdout]).toEqual([1, ''])
    expect(stderr.trim().split('\n')).toEqual([
      `${bad}: row 2, load_N: expected at least 0, received -3`,
      `${bad}: row 3, load_N: expected a number, received "x"`,
      expect.stringMatching(/worse\.csv: row 1, load: expected its unit after the name: /),
      expect.stringMatching(/nowhere\.csv: expected a file that can be read, received: no such file/),
    ])
  })

  test.each([
    [
      'a roller that the scenario has not',
      'roller,load_N,sinkage_mm\nslim,100,0.5\nslim,150,0.6\n',
      /row 2, roller: expected one of .*received "slim"/,
    ],
    [
      'too few readings',
      'plate_diameter_mm,load_N,sinkage_mm\n50,40,0.5\n',
      /readings: expected at least 2 readings/,
    ],
    ['heights alone', 'height_mm\n3.4\n3.5\n', /readings: expected readings of a sinkage/],
  ])('%s', (_, text, words) => {
    const { status, stdout, stderr } = run([saved('one.csv', text), '--scenario', unit])
    expect([status, stdout]).toEqual([1, ''])
    expect(stderr).toMatch(words)
  })

  test('a scenario that is none', () => {
    const { status, stderr } = run([plates, '--scenario', saved('list.json', '[]')])
    expect(status).toBe(1)
    expect(stderr).toMatch(/list\.json: the file: expected an object/)
  })

  test('an export that cannot be written', () => {
    const nowhere = join(folder, 'no', 'folder', 'fit.R')
    const { status, stdout, stderr } = run([plates, '--export', 'R', nowhere])
    expect([status, stdout, existsSync(nowhere)]).toEqual([1, '', false])
    expect(stderr).toMatch(/expected a file that can be written/)
  })
})

describe('wrong usage: exit code 2 and how to do it right', () => {
  test.each([
    ['no table', [], /expected a table of readings/],
    ['standard input twice', ['-', '-'], /expected - once/],
    ['a law nobody knows', ['PLATES', '--law', 'bog'], /--law: expected one of linear, power/],
    ['a law that needs its numbers', ['PLATES', '--law', 'layered'], /--law: expected/],
    [
      'a parameter nobody knows',
      ['PLATES', '--free', 'stiffness'],
      /--free: expected one of softness.*nearest/,
    ],
    ['noise without a unit', ['PLATES', '--noise', '0.05'], /--noise: expected a length with its unit/],
    ['noise of nothing', ['PLATES', '--noise', '0mm'], /--noise: expected more than 0/],
    ['noise that is a word', ['PLATES', '--noise', 'little'], /--noise: expected estimated, or a length/],
    ['a level beyond one', ['PLATES', '--level', '95'], /--level: expected between 0 and 1/],
    ['something held without a value', ['PLATES', '--hold', 'exponent'], /--hold: expected NAME=VALUE/],
    [
      'a length held without its unit',
      ['PLATES', '--hold', 'spread=2'],
      /--hold: expected a length with its unit/,
    ],
    [
      'a number held that is none',
      ['PLATES', '--hold', 'exponent=steep'],
      /--hold: expected a number for exponent/,
    ],
    ['rollers without a scenario', ['ROLLERS'], /--scenario: expected the rollers by name/],
    ['an export without a file', ['PLATES', '--export', 'R'], /--export: expected R or Python and a file/],
    [
      'an export to nobody',
      ['PLATES', '--export', 'prose', 'x'],
      /--export: expected R or Python and a file/,
    ],
    [
      'an export of two tables',
      ['PLATES', 'ROLLERS', '--export', 'R', 'x'],
      /expected one table of readings/,
    ],
    ['an option nobody knows', ['PLATES', '--softly'], /softly/],
    ['units nobody knows', ['PLATES', '--units', 'furlongs'], /--units: expected/],
  ])('%s', (_, words, sentence) => {
    const files: Record<string, string> = { PLATES: plates, ROLLERS: rollers }
    const { status, stdout, stderr } = run(words.map(word => files[word] ?? word))
    expect([status, stdout]).toEqual([2, ''])
    expect(stderr).toMatch(sentence)
    expect(stderr).toMatch(/usage: swardsink/)
  })
})
