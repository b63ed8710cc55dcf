import { execFileSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type * as Model from '@swardsink/model'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { fencesOf } from './support/fences.ts'
import { repository } from './support/files.ts'
import { expectNear, identity, solver, stated } from './support/tolerance.ts'

/** The law that DEVELOPERS.md adds, as it stands there. */
const example = fencesOf(readFileSync(join(repository, 'DEVELOPERS.md'), 'utf8')).find(
  ({ language, text }) => language === 'ts' && text.startsWith('// packages/model/src/turf/laws/'),
)

let copy: string
let model: typeof Model

/** A copy of the model with the law put in as the document says: one file, one import, one name in the list. */
beforeAll(async () => {
  if (!example) throw new Error('DEVELOPERS.md shows no law')
  const name = /laws\/(\w+)\.ts/.exec(example.text)?.[1] ?? ''
  const cache = join(repository, '.cache')
  mkdirSync(cache, { recursive: true })
  copy = mkdtempSync(join(cache, 'law-'))
  cpSync(join(repository, 'packages/model/src'), join(copy, 'src'), { recursive: true })
  const laws = join(copy, 'src/turf/laws')
  writeFileSync(join(laws, `${name}.ts`), example.text)
  const list = readFileSync(join(laws, 'laws.ts'), 'utf8')
  const longer = list.replace(/( \} as const)/, `, ${name}$1`)
  writeFileSync(join(laws, 'laws.ts'), `import { ${name} } from './${name}.ts'\n${longer}`)
  writeFileSync(
    join(copy, 'tsconfig.json'),
    JSON.stringify({
      extends: '../../tsconfig.base.json',
      compilerOptions: { lib: ['ES2023'], noEmit: true },
      include: ['src'],
    }),
  )
  model = (await import(/* @vite-ignore */ join(copy, 'src/index.ts'))) as typeof Model
}, 60_000)
afterAll(() => rmSync(copy, { recursive: true, force: true }))

const mm = 1e-3
/** A name the model's own types do not know. */
const law = { kind: 'exponential', softness: 0.4 * mm, scale: 0.9 * mm } as unknown as Model.PressureLaw
const roller: Model.Roller = { mass: 6.4, diameter: 56 * mm, length: 0.54, surface: { kind: 'smooth' } }
const grooved: Model.Roller = {
  ...roller,
  surface: { kind: 'grooved', pitch: 12 * mm, land: 5 * mm, depth: 5 * mm },
}
const standing = { kind: 'standing' } as const

test('the law of DEVELOPERS.md fits the types of the model', () => {
  const compiler = join(repository, 'node_modules/typescript/bin/tsc')
  const said = () => execFileSync(process.execPath, [compiler, '-p', copy], { encoding: 'utf8' })
  expect(said()).toBe('')
}, 60_000)

describe('the law of DEVELOPERS.md', () => {
  test('bears the reference pressure at its softness', () => {
    expectNear(model.pressureAt(law, 0.4 * mm), 10e3, identity)
    expectNear(model.sinkageAt(law, 10e3), 0.4 * mm, identity)
    expectNear(model.softnessOf(law), 0.4 * mm, identity)
  })

  test('has the slope and the work of its pressure', () => {
    for (const z of [0.001 * mm, 0.1 * mm, 1.3 * mm]) {
      const h = 1e-5 * z
      const [before, after] = [z - h, z + h]
      const rise = (of: (law: Model.PressureLaw, z: number) => number) =>
        (of(law, after) - of(law, before)) / 2 / h
      expectNear(rise(model.pressureAt), model.slopeAt(law, z), stated(1e-8))
      expectNear(rise(model.workTo), model.pressureAt(law, z), stated(1e-8))
    }
  })

  test('is the linear law where the scale is long', () => {
    const long = { ...law, scale: 1e4 } as unknown as Model.PressureLaw
    const linear: Model.PressureLaw = { kind: 'linear', softness: 0.4 * mm }
    for (const one of [roller, grooved]) {
      const ask = (of: Model.PressureLaw) =>
        model.loadAt({ roller: one, turf: { law: of, spread: 2 * mm }, sinkage: mm, condition: standing })
      const [received, expected] = [ask(long), ask(linear)]
      if (received.outcome !== 'settled' || expected.outcome !== 'settled') throw new Error('no answer')
      expectNear(received.load, expected.load, stated(1e-6))
    }
  })

  test('carries a grooved roller and gives its load back', () => {
    const turf = { law, spread: 2 * mm }
    const pressed = model.press({ roller: grooved, turf, load: 150, condition: standing })
    if (pressed.outcome !== 'settled') throw new Error(model.sentence(pressed))
    const { sinkage } = pressed
    const back = model.loadAt({ roller: grooved, turf, sinkage, condition: standing })
    if (back.outcome !== 'settled') throw new Error('no answer')
    expectNear(back.load, 150, solver)
  })

  test('is read from a scenario, with its problems told in place', async () => {
    const turf = { law: { kind: 'exponential', softness_mm: 0.4, scale_mm: -1 } }
    const reading = await model.readScenario({ turfs: { one: turf }, turf: 'one' })
    if (reading.ok) throw new Error('read without its problems')
    expect(reading.problems.map(model.sentence)).toContain(
      'turfs.one.law.scale_mm: expected more than 0 mm, received -1 mm',
    )
  })
})
