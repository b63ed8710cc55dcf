import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import {
  compareRollers,
  formatQuantity,
  GRAVITY,
  mapToRows,
  readScenario,
  type Scenario,
  settle,
  sinkageMap,
  type Turf,
} from '@swardsink/model'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { fileWith } from '../support/arbitraryScenario.ts'
import { buildStale } from '../support/servedPage.ts'
import { expectNear, stated } from '../support/tolerance.ts'

const program = fileURLToPath(new URL('../../packages/model/bin/swardsink.js', import.meta.url))

let folder: string
let sound: string
let scenario: Scenario
let turf: Turf

beforeAll(async () => {
  await buildStale('model')
  folder = mkdtempSync(join(tmpdir(), 'Ellerby Höllow '))
  sound = saved('scenario.json', fileWith())
  const reading = await readScenario(fileWith())
  scenario = reading.ok ? reading.scenario : expect.fail(JSON.stringify(reading.problems))
  turf = scenario.turfs[scenario.turf] ?? expect.fail(scenario.turf)
}, 120_000)
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function saved(name: string, value: unknown): string {
  const path = join(folder, name)
  writeFileSync(path, typeof value === 'string' ? value : JSON.stringify(value))
  return path
}

function run(args: readonly string[], input?: string) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...args], {
    encoding: 'utf8',
    ...(input === undefined ? {} : { input }),
  })
  return { status, stdout, stderr }
}

const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value))
const firstLine = (text: string) => text.split('\n')[0]

describe('answers', () => {
  test('settle says what the unit cuts, in a table', () => {
    const { status, stdout, stderr } = run(['settle', sound])
    expect([status, stderr]).toEqual([0, ''])
    const settled = settle({ unit: scenario.unit, turf, condition: scenario.condition })
    if (settled.outcome !== 'settled') return expect.fail(settled.outcome)
    expect(firstLine(stdout)).toContain(formatQuantity(settled.effectiveHeight.middle, 'height'))
    expect(firstLine(stdout)).toContain(formatQuantity(settled.drop.middle, 'drop'))
    const sinkage = stdout.split('\n').find(line => line.startsWith('sinkage')) ?? ''
    expect(sinkage).toContain(formatQuantity(settled.front.sinkage, 'sinkage', { unit: false }))
    expect(sinkage).toContain(formatQuantity(settled.rear.sinkage, 'sinkage', { unit: false }))
  })

  test('settle --json is what the library answers', () => {
    for (const words of [[], ['--balance', 'level'], ['--arc', 'circle']]) {
      const { status, stdout } = run(['settle', sound, '--json', ...words])
      expect(status).toBe(0)
      const how = words.includes('level')
        ? ({ balance: 'level' } as const)
        : words.includes('circle')
          ? ({ arc: 'circle' } as const)
          : {}
      const asked = { unit: scenario.unit, turf, condition: scenario.condition, ...how }
      expect(JSON.parse(stdout)).toEqual(plain(settle(asked)))
    }
  })

  test('compare names every roller and warns before work on the unit', () => {
    const { status, stdout } = run(['compare', sound])
    expect(status).toBe(0)
    for (const name of Object.keys(scenario.rollers)) expect(stdout).toContain(name)
    expect(stdout).toMatch(/stop the engine or isolate the battery/)
    const json = run(['compare', sound, '--json'])
    const { unit, rollers, condition, effectiveHeight } = scenario
    const compared = compareRollers({
      unit,
      rollers,
      turf,
      condition,
      ...(effectiveHeight === undefined ? {} : { effectiveHeight }),
    })
    expect(JSON.parse(json.stdout)).toEqual(plain(compared))
  })

  test('map --json is the map’s rows, for the masses and softnesses asked', () => {
    const words = ['--masses', '4.1,5.2', '--softnesses', '0.3,0.44,6', '--quantity', 'drop']
    const { status, stdout } = run(['map', sound, '--json', ...words])
    expect(status).toBe(0)
    const map = sinkageMap({
      unit: scenario.unit,
      turf,
      condition: scenario.condition,
      masses: [4.1, 5.2],
      softnesses: [0.3, 0.44, 6].map(softness => softness * 1e-3),
      quantity: 'drop',
    })
    expect(JSON.parse(stdout)).toEqual(plain(mapToRows(map)))
    expect(run(['map', sound, ...words]).stdout).toMatch(/bottomed out/)
  })

  test('- reads standard input, with or without a byte-order mark', () => {
    const text = JSON.stringify(fileWith())
    for (const input of [text, `\uFEFF${text}`])
      expect(run(['settle', '-'], input)).toEqual(run(['settle', sound]))
  })

  test('US units are shown and read', () => {
    const { status, stdout } = run(['settle', sound, '--units', 'US'])
    expect(status).toBe(0)
    expect(firstLine(stdout)).toContain(formatQuantity(scenario.unit.benchHeight, 'height', { units: 'US' }))
    expect(stdout).toMatch(/psi/)
    const words = ['--units', 'US', '--masses', '11', '--softnesses', '0.02', '--json']
    const [row] = JSON.parse(run(['map', sound, ...words]).stdout) as { mass: number; softness: number }[]
    expect(row).toMatchObject({ mass: 11 * 0.45359237, softness: 0.02 * 0.0254 })
  })

  test.each([[['--help']], [['-h']], [['settle', '--help']]])('%s says how', words => {
    const { status, stdout } = run(words)
    expect(status).toBe(0)
    expect(stdout).toMatch(/usage: swardsink settle/)
  })

  test('cautions are told in the units asked', () => {
    const file = saved('lightly.json', fileWith({ 'unit.body.height_mm': undefined }))
    expect(run(['settle', file]).stdout).toContain("the front axle's, 30 mm, is taken")
    expect(run(['settle', file, '--units', 'US']).stdout).toContain("the front axle's, 1.18 in, is taken")
  })

  test('both ends of the edge are told where they differ, and what lies between the two heights', () => {
    const leaning = saved('leaning.json', fileWith({ 'unit.body.offset_mm': 40 }))
    expect(firstLine(run(['settle', leaning]).stdout)).toMatch(
      /Left end \d\.\d\d.mm, right end \d\.\d\d.mm\.$/,
    )
    expect(firstLine(run(['settle', sound]).stdout)).not.toContain('Left end')
    const mowing = saved('mowing.json', fileWith({ condition: { kind: 'mowing', speed_kmh: 5 } }))
    const told = firstLine(run(['settle', mowing]).stdout) ?? ''
    const [set, cuts, drop, back] = [...told.matchAll(/(\d+\.\d\d).mm/g)].map(([, number]) => Number(number))
    expect(told).toContain('turf still pressed down')
    expect(Math.abs((set ?? 0) - (drop ?? 0) + (back ?? 0) - (cuts ?? 0))).toBeLessThan(0.021)
  })

  test('a number that was perhaps meant in another unit is answered with a note', () => {
    const file = saved('metres.json', fileWith({ 'unit.benchHeight_mm': undefined, 'unit.benchHeight': 5.1 }))
    const { status, stderr } = run(['settle', file])
    expect(status).toBe(0)
    expect(stderr).toMatch(
      /^note: unit\.benchHeight: expected at most about 50 mm .*benchHeight_mm.*received 5100 mm/,
    )
    expect(run(['settle', sound]).stderr).toBe('')
  })

  test('a unit weighed on scales may carry other loads', () => {
    const scales = { total_kg: 29.2, front_kg: 14.4, left_kg: 14.2 }
    const loads = [{ name: 'lamp', mass_kg: 1.5, at_mm: 0 }]
    const file = fileWith({ 'unit.body': undefined, 'unit.scales': scales, 'unit.loads': loads })
    const { front } = JSON.parse(
      run(['settle', '-', '--json', '--balance', 'level'], JSON.stringify(file)).stdout,
    )
    expectNear(front.load, (14.4 + 1.5) * GRAVITY, stated(1e-9))
  })
})

describe('input at fault: exit code 1, nothing on standard output', () => {
  test('three mistakes are three sentences, path first', () => {
    const spoilt = saved(
      'three.json',
      fileWith({
        'rollers.plain.mass_kg': -6.8,
        'unit.rearRoller.diameter_mm': '51mm',
        turf: 'elm lawn',
      }),
    )
    const { status, stdout, stderr } = run(['settle', spoilt])
    expect([status, stdout]).toEqual([1, ''])
    expect(stderr.trim().split('\n').sort()).toEqual([
      'rollers.plain.mass_kg: expected at least 0 kg, received -6.8 kg',
      'turf: expected one of "beech lawn (invented)", received "elm lawn"',
      'unit.rearRoller.diameter_mm: expected a number, received "51mm"',
    ])
  })

  test.each([
    ['a file that is not there', 'nowhere.json', undefined, /nowhere.json: expected a file .*no such file/],
    ['a file that is not JSON', 'prose.json', 'the beech lawn', /prose.json: expected JSON/],
    ['a file that holds a list', 'list.json', [], /the file: expected an object/],
  ])('%s', (_, name, content, words) => {
    const path = content === undefined ? join(folder, name) : saved(name, content)
    const { status, stdout, stderr } = run(['settle', path])
    expect([status, stdout]).toEqual([1, ''])
    expect(stderr).toMatch(words)
  })

  test('turf that bottoms out under the unit', () => {
    const deep = saved('deep.json', fileWith({ 'unit.body.mass_kg': 9000 }))
    const { status, stdout, stderr } = run(['settle', deep])
    expect([status, stdout]).toEqual([1, ''])
    expect(stderr).toMatch(/bottoms out under the (front|rear) roller/)
    const json = run(['settle', deep, '--json'])
    expect(json.status).toBe(1)
    expect(JSON.parse(json.stdout)).toMatchObject({ outcome: 'bottomed out' })
  })
})

describe('wrong usage: exit code 2 and how to do it right', () => {
  test.each([
    ['no command', [], /expected a command/],
    ['a command nobody knows', ['roll', 'SCENARIO'], /expected one of settle, compare, map/],
    ['no file', ['settle'], /expected a scenario file/],
    ['two files', ['settle', 'SCENARIO', 'SCENARIO'], /one scenario file/],
    ['an option nobody knows', ['settle', 'SCENARIO', '--softly'], /softly/],
    ['an option of another command', ['settle', 'SCENARIO', '--masses', '4'], /--masses: settle knows/],
    ['a word an option does not know', ['settle', 'SCENARIO', '--units', 'furlongs'], /--units: expected/],
    ['masses that are no numbers', ['map', 'SCENARIO', '--masses', '4,heavy'], /--masses: expected numbers/],
  ])('%s', (_, words, sentence) => {
    const { status, stdout, stderr } = run(words.map(word => (word === 'SCENARIO' ? sound : word)))
    expect([status, stdout]).toEqual([2, ''])
    expect(stderr).toMatch(sentence)
    expect(stderr).toMatch(/usage: swardsink/)
  })
})
