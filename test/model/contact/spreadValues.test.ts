import {
  type Arc,
  acrossGrooves,
  loadAt,
  type PressureLaw,
  press,
  type Roller,
  type Surface,
} from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { rollerOnTurf } from '../../../packages/model/src/contact/index.ts'
import { expectNear, expectPrinted, identity, stated } from '../../support/tolerance.ts'

const mm = 1e-3
const standing = { kind: 'standing' } as const
const mowing = { kind: 'mowing', speed: 1.4 } as const
/** Softness of 1 mm, k = 10 kPa/mm: loads over k in mm² are loads in N/m over this. */
const k = 10e3 / mm
const linear: PressureLaw = { kind: 'linear', softness: 1 * mm }

const grooved = (land: number, gap: number, depth: number): Surface => ({
  kind: 'grooved',
  pitch: (land + gap) * mm,
  land: land * mm,
  depth: depth * mm,
})
const wheel = (radius: number, surface: Surface = { kind: 'smooth' }): Roller => ({
  mass: 4.2,
  diameter: 2 * radius * mm,
  length: 0.5,
  surface,
})

// Source: Pasternak's foundation, closed forms derived: load of a pitch = k w (w_l + 2 l tanh(g/2l)).
describe('published values of lands on turf that spreads load', () => {
  test.each([
    [5, 5, 3, '9.09357074', '0.90935707', '0.73110796'],
    [2, 6, 1, '3.99010951', '0.49876369', '0.09932793'],
    [6, 4, 10, '9.94750640', '0.99475064', '0.98032800'],
  ])('land %f, gap %f, spread %f mm', (land, gap, spread, load, fraction, middle) => {
    const sinkage = 0.8 * mm
    const found = acrossGrooves({
      surface: grooved(land, gap, 50),
      turf: { law: linear, spread: spread * mm },
      sinkage,
    })
    expectPrinted(((found.meanPressure / k) * (land + gap)) / sinkage, load)
    expectPrinted(found.bearingFraction, fraction)
    expectPrinted(found.lowestSinkage / sinkage, middle)
    expect(found.floor).toBe('free')
  })

  test('a strip far from its neighbours carries k w (b + 2l)', () => {
    const found = acrossGrooves({
      surface: grooved(5, 200, 50),
      turf: { law: linear, spread: 2 * mm },
      sinkage: 1 * mm,
    })
    expectNear((found.meanPressure * 205) / k / mm, 5 + 2 * 2, identity)
    // line force of one edge: k w l
    expectNear(found.edgeForce, k * 1 * mm * 2 * mm, identity)
  })
})

// Source: derived; c = g/2 − l acosh(w/(w−d)), load/k = w w_l + 2c(w−d) + 2l√(d(2w−d)).
describe('published values of turf that touches the groove floor', () => {
  test.each([
    [5, 5, 3, 10, 2.5, '9.297412', '0.113904', '91.394824'],
    [6, 10, 2, 6, 3, '3.584534', '2.366084', '70.981115'],
    [6, 10, 2, 6, 4, '4.779379', '1.474506', '64.525440'],
  ])('land %f, gap %f, spread %f, sinkage %f, depth %f mm', (land, gap, l, w, depth, start, half, load) => {
    const question = { surface: grooved(land, gap, depth), turf: { law: linear, spread: l * mm } }
    const at = (sinkage: number) => acrossGrooves({ ...question, sinkage: sinkage * mm })
    const found = at(w)
    expect(found.floor).toBe('touching')
    expectPrinted((found.meanPressure / k / mm) * (land + gap), load)
    expectNear(found.lowestSinkage / mm, w - depth, identity)
    // the mat leaves the floor where the profile first rises from it
    const onFloor = found.across
      .filter(({ sinkage }) => Math.abs(sinkage / mm - (w - depth)) < 1e-9)
      .map(({ position }) => position / mm - land / 2)
      .filter(position => position > 0)
    expectPrinted(gap / 2 - Math.min(...onFloor), half)
    expect(at(Number(start) - 1e-6).floor).toBe('free')
    expect(at(Number(start) + 1e-6).floor).toBe('touching')
  })
})

// Source: derived; a given contact length a makes z₀ and load: z₀ = [(a+l)² − l²]/2R, w/k = 2/3R [(a+l)³ − l³].
describe('published values of a smooth roller on turf that spreads load', () => {
  test.each([
    [32, 2, 6, 0.9375, '10.5'],
    [32, 10, 6, 2.4375, '64.5'],
    [100, 8, 3, 0.285, '5.46'],
  ])('radius %f, spread %f, half contact %f mm', (radius, spread, half, sinkage, text) => {
    const turf = { law: linear, spread: spread * mm }
    const loaded = loadAt({ roller: wheel(radius), turf, sinkage: sinkage * mm, condition: standing })
    if (loaded.outcome !== 'settled') return expect.fail(loaded.outcome)
    expectNear(loaded.lineLoad / k / mm / mm, Number(text), identity)
    const pressed = press({ roller: wheel(radius), turf, load: loaded.load, condition: standing })
    if (pressed.outcome !== 'settled') return expect.fail(pressed.outcome)
    expectNear(pressed.lengthAhead / mm, half, stated(1e-11))
    expectNear(pressed.lengthBehind / mm, half, stated(1e-11))
    // its free ends carry as a strip of l each would
    expectNear(loaded.load, loaded.lineLoad * (0.5 + 2 * spread * mm), identity)
  })
})

// Source: derived; parabola, R 32 mm, s 1 mm, l 2 mm, H 4 mm, n 0.6, λ ½; loads N/m.
// (The logarithmic resistance stands there as 10.666386, cut off and not rounded: 10.66638657 in closed form.)
describe('published values of every law with spread', () => {
  const laws: Record<string, PressureLaw> = {
    linear,
    power: { kind: 'power', softness: 1 * mm, exponent: 0.6 },
    stiffening: { kind: 'stiffening', softness: 1 * mm, lockingDepth: 4 * mm },
    logarithmic: { kind: 'logarithmic', softness: 1 * mm, lockingDepth: 4 * mm },
  }
  const line = (law: PressureLaw, z: number, condition: typeof standing | typeof mowing, arc?: Arc) => {
    const turf = { law, spread: 2 * mm, rebound: 0.5 }
    const question = { roller: wheel(32), turf, sinkage: z * mm, condition, ...(arc ? { arc } : {}) }
    const loaded = loadAt(question)
    if (loaded.outcome !== 'settled') return expect.fail(loaded.outcome)
    const pressed = press({ ...question, load: loaded.load })
    if (pressed.outcome !== 'settled') return expect.fail(pressed.outcome)
    // resistance counts the free ends as the load does
    return { load: loaded.lineLoad, resistance: (pressed.resistance * loaded.lineLoad) / loaded.load }
  }

  test.each([
    ['linear', 1, '115.15466', '98.29065', '2.5'],
    ['power', 2, '272.52147', '232.61163', '9.473229'],
    ['stiffening', 2, '399.90352', '341.33900', '11.588831'],
    ['logarithmic', 2, '350.09911', '298.82829', '10.66639'],
  ])('%s at %f mm', (name, z, stands, mows, resistance) => {
    const law = laws[name] ?? expect.fail(name)
    expectPrinted(line(law, z, standing).load, stands)
    expectPrinted(line(law, z, mowing).load, mows)
    const text = resistance === '2.5' ? '2.5000000' : resistance
    expectPrinted(line(law, z, mowing).resistance, text)
  })

  test.each([
    ['linear', '311.87269'],
    ['power', '270.09201'],
    ['stiffening', '397.25134'],
    ['logarithmic', '347.58859'],
  ])('%s at 2 mm on the true circle', (name, text) => {
    expectPrinted(line(laws[name] ?? expect.fail(name), 2, standing, 'circle').load, text)
  })
})

// Source: derived; full solution extrapolated, good to 1e-4; quick model with χ; strip alone. Load of a pitch over k.
describe('published values of a grooved roller on turf that spreads load', () => {
  test.each([
    [38, 3, 2, 5, 10, 550.703, '550.7011', '540.3542'],
    [32, 1, 2, 5, 5, 95.757, '95.8058', '89.5268'],
  ])('R %f, z₀ %f, l %f, land %f, gap %f mm', (radius, z, spread, land, gap, full, quick, strip) => {
    const roller = wheel(radius, grooved(land, gap, 20))
    const turf = { law: linear, spread: spread * mm }
    const pressing = rollerOnTurf({ roller, turf, condition: standing }).at(z * mm)
    const pitch = (land + gap) / (k * mm * mm)
    expectPrinted(pressing.lineLoad * pitch, quick)
    expectPrinted((pressing.grooves?.strip.load ?? Number.NaN) * pitch, strip)
    expectNear(
      pressing.lineLoad * pitch,
      full,
      stated(2e-3 * (spread / Math.sqrt(2 * radius * z) < 0.3 ? 1 : 4)),
    )
  })
})
