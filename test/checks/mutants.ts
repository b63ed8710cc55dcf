/** One line of physics made wrong, and the tests that have to see it. */
export type Mutant = {
  /** Below packages/model/src. */
  readonly file: string
  /** Exactly as it stands there, once. */
  readonly right: string
  readonly wrong: string
  readonly kind: 'sign' | 'exponent' | 'factor'
  readonly what: string
  /** Below test/model. */
  readonly tests: readonly string[]
}

export const mutants: readonly Mutant[] = [
  {
    file: 'turf/laws/power.ts',
    right: 'const work = (z: number) => (pressure(z) * z) / (n + 1)',
    wrong: 'const work = (z: number) => (pressure(z) * z) / (n + 2)',
    kind: 'factor',
    what: 'work of the power law',
    tests: ['turf/pressureLaws.test.ts'],
  },
  {
    file: 'turf/laws/stiffening.ts',
    right: 'const k = (REFERENCE_PRESSURE * (1 - s / H)) / s',
    wrong: 'const k = (REFERENCE_PRESSURE * (1 + s / H)) / s',
    kind: 'sign',
    what: 'softness of the stiffening law',
    tests: ['turf/pressureLaws.test.ts'],
  },
  {
    file: 'turf/turf.ts',
    right: '((turf.spread ?? 0) ** 2 * REFERENCE_PRESSURE) / softnessOf(turf.law)',
    wrong: '((turf.spread ?? 0) ** 1 * REFERENCE_PRESSURE) / softnessOf(turf.law)',
    kind: 'exponent',
    what: 'shear from spread',
    tests: ['contact/spreadValues.test.ts', 'contact/scaling.test.ts'],
  },
  {
    file: 'turf/recovery.ts',
    right: 'Math.exp(-time / recoveryTime)',
    wrong: 'Math.exp(-time / recoveryTime / 2)',
    kind: 'factor',
    what: 'how fast turf comes back',
    tests: ['unit/track.test.ts', 'contact/repeatedPasses.test.ts'],
  },
  {
    file: 'contact/smoothSide.ts',
    right: 'const part = Math.sqrt(rebound)',
    wrong: 'const part = rebound',
    kind: 'exponent',
    what: 'trailing side of a rolling roller',
    tests: ['contact/arcIntegral.test.ts', 'contact/rigidCylinder.test.ts'],
  },
  {
    file: 'contact/smoothSide.ts',
    right: 'load: load + G * edgeSlope,',
    wrong: 'load: load - G * edgeSlope,',
    kind: 'sign',
    what: 'line force where turf leaves the roller',
    tests: ['reference/smoothWithSpread.test.ts'],
  },
  {
    file: 'contact/wholeRoller.ts',
    right: 'const whole = length + 2 * end.reach',
    wrong: 'const whole = length + end.reach',
    kind: 'factor',
    what: 'both free ends of a roller',
    tests: ['contact/spreadValues.test.ts', 'contact/limits.test.ts', 'reference/twoRollers.test.ts'],
  },
  {
    file: 'contact/gapKernel.ts',
    right: 'out.load = curve.pressure(sinkage) * surface.land + 2 * edgeForce',
    wrong: 'out.load = curve.pressure(sinkage) * surface.land + edgeForce',
    kind: 'factor',
    what: 'line forces on both edges of a land',
    tests: ['reference/acrossGrooves.test.ts'],
  },
  {
    file: 'contact/quickGroove.ts',
    right: 'const part = (land + (carrying - land) / 2 + (gap / 2) * sag * sag) / carrying',
    wrong: 'const part = (land + (carrying - land) / 2 + (gap / 2) * sag) / carrying',
    kind: 'exponent',
    what: 'share of the correction that the grooves leave',
    tests: ['reference/patch.test.ts', 'contact/spreadValues.test.ts'],
  },
  {
    file: 'contact/rollerOnTrack.ts',
    right: 'depth / back), Math.sqrt(back), 1 / back)',
    wrong: 'depth / back), back, 1 / back)',
    kind: 'exponent',
    what: 'load in a track',
    tests: ['contact/rollerOnTrack.test.ts'],
  },
  {
    file: 'contact/relaxingStrip.ts',
    right: 'const moment = (entry - S) * lineLoad',
    wrong: 'const moment = (entry + S) * lineLoad',
    kind: 'sign',
    what: 'resistance of turf that relaxes',
    tests: ['contact/rollingAtSpeed.test.ts'],
  },
  {
    file: 'contact/headland.ts',
    right: 'rootMeanSquare: Math.hypot(half / Math.sqrt(3), shift, e) / radius,',
    wrong: 'rootMeanSquare: Math.hypot(half / 3, shift, e) / radius,',
    kind: 'exponent',
    what: 'sliding on a turn',
    tests: ['contact/headland.test.ts'],
  },
  {
    file: 'unit/balance.ts',
    right: 'along += down * at + tangential * (height - axle)',
    wrong: 'along += down * at - tangential * (height - axle)',
    kind: 'sign',
    what: 'moment of what acts along the ground',
    tests: ['unit/slopes.test.ts', 'unit/balance.test.ts'],
  },
  {
    file: 'unit/settle.ts',
    right: 'edge * Math.sin(tilt) +',
    wrong: 'edge * Math.sin(-tilt) +',
    kind: 'sign',
    what: 'drop of the edge by the lean of the unit',
    tests: ['reference/twoRollers.test.ts'],
  },
  {
    file: 'unit/raised.ts',
    right: 'growth.front * (1 - at / wheelbase) + growth.rear * (at / wheelbase)',
    wrong: 'growth.front * (1 - at / wheelbase) - growth.rear * (at / wheelbase)',
    kind: 'sign',
    what: 'lift of the edge by what sticks to the rollers',
    tests: ['unit/buildUp.test.ts'],
  },
  {
    file: 'unit/bounce.ts',
    right: 'const apart = Math.hypot(A - D, 2 * coupling)',
    wrong: 'const apart = Math.hypot(A - D, coupling)',
    kind: 'factor',
    what: 'coupling of heave and pitch',
    tests: ['unit/bounce.test.ts'],
  },
  {
    file: 'study/fit/compliance/loadRates.ts',
    right: 'digamma(n + 1) - digamma(n + 3 / 2)',
    wrong: 'digamma(n + 1) + digamma(n + 3 / 2)',
    kind: 'sign',
    what: 'how the load of a roller hangs on the exponent',
    tests: ['study/fit/forwardModel.test.ts'],
  },
  {
    file: 'study/nextReading/narrowing.ts',
    right: 'const whole = variance + dot(slopes, along)',
    wrong: 'const whole = variance + 2 * dot(slopes, along)',
    kind: 'factor',
    what: 'what one more reading leaves of the covariance',
    tests: ['study/nextReading/nextReading.test.ts'],
  },
]

/** The file with its line made wrong; an error where the line is not there, or there twice. */
export function mutated(text: string, { file, right, wrong, what }: Mutant): string {
  const times = text.split(right).length - 1
  if (times !== 1)
    throw new Error(
      `${what}: ${times === 0 ? 'the line has moved or changed' : `the line stands ${times} times`} in ${file}: ${right}`,
    )
  return text.replace(right, () => wrong)
}
