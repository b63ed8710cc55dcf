import { tell, type UnitSystem } from '../../quantities/index.ts'
import type { ComplianceFit } from '../fit/compliance/complianceFit.ts'
import type { Noise } from '../fit/fit.ts'
import { counted, equationOf, isAbsent, joined } from './fitReport.ts'
import { levelOf } from './scriptedFit.ts'
import { parameterWord } from './shownParameter.ts'

export type MethodsQuestion = {
  readonly fit: ComplianceFit
  readonly noise: Noise
  /** How many of the readings carry a standard deviation of their own, and a step of the gauge. */
  readonly given?: { readonly standardDeviation: number; readonly gaugeStep: number }
  readonly loss?: { readonly kind: string; readonly at?: number }
  readonly units?: UnitSystem
}

const PERCENT = 100
const DATUMS = ['datum', 'dropDatum']

function parametersSentence({ parameters }: ComplianceFit): string {
  const turf = parameters.filter(({ name }) => !DATUMS.includes(name))
  const words = (list: typeof turf) => [...new Set(list.map(({ name }) => parameterWord(name)))]
  const free = turf.filter(({ state }) => state !== 'fixed')
  const shared = words(free.filter(({ set }) => set === undefined))
  const own = words(free.filter(({ set }) => set !== undefined))
  const held = words(turf.filter(parameter => parameter.state === 'fixed' && !isAbsent(parameter)))
  const is = (list: readonly string[]) => (list.length === 1 ? 'was' : 'were')
  const parts = [
    ...(shared.length > 0 ? [`${joined(shared)} ${is(shared)} estimated for all readings together`] : []),
    ...(own.length > 0 ? [`${joined(own)} ${is(own)} estimated for each set`] : []),
    ...(held.length > 0 ? [`${joined(held)} ${is(held)} held`] : []),
  ]
  const text = joined(parts)
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`
}

function forwardSentence({ readings, parameters }: ComplianceFit): string {
  const spreads = parameters.some(({ name, value }) => name === 'spread' && value > 0)
  const has = (kind: 'plate' | 'roller') =>
    readings.some(({ foot, load }) => foot.kind === kind && load !== null)
  const by = [
    ...(has('plate')
      ? [`the pressure under a plate${spreads ? ' and the shear of the mat around it' : ''}`]
      : []),
    ...(has('roller') ? ['the pressure integrated over the arc of a standing roller'] : []),
    ...(readings.some(({ load }) => load === null) ? ['the balance of the whole unit on both rollers'] : []),
  ]
  return `Sinkage under each load followed from ${joined(by)}.`
}

function weightsSentence({ noise, given, units = 'metric' }: MethodsQuestion): string {
  const ownDeviation = (given?.standardDeviation ?? 0) > 0
  const step = (given?.gaugeStep ?? 0) > 0 ? ', with the variance of the gauge’s step (step²/12) added' : ''
  if (noise.kind === 'known')
    return ownDeviation
      ? `Readings were weighted by the inverse of their known variance, that of a mean divided by its number of readings${step}.`
      : `The standard deviation of a reading was taken to be ${tell(noise.standardDeviation, 'sinkage', units)}, that of a mean divided by the root of its number of readings${step}.`
  return ownDeviation
    ? `Readings were weighted in proportion to the inverse of the variance given with them${step}, and the scatter was estimated from the residuals.`
    : 'Readings were weighted by the number of readings they are the mean of, and the scatter was estimated from the residuals.'
}

function intervalSentence({ fit, noise }: MethodsQuestion): string {
  const level = `${Number((PERCENT * levelOf(fit.parameters)).toPrecision(4))} %`
  const quantile =
    noise.kind === 'known'
      ? 'the normal distribution'
      : `the t distribution with ${counted(fit.degreesOfFreedom, 'degree of freedom', 'degrees of freedom')}`
  return `Positive parameters were solved for in their logarithm; standard errors are from the covariance (JᵀWJ)⁻¹ at the minimum, ${level} intervals from ${quantile}, for positive parameters on the logarithm.`
}

/** How a fit was made, as a paragraph for the methods of a paper. */
export function methodsParagraph(question: MethodsQuestion): string {
  const { fit, loss } = question
  const datum = fit.parameters.some(({ name }) => DATUMS.includes(name))
    ? 'The zero of the gauge was unknown and was estimated for each set. '
    : ''
  const robust =
    loss && loss.kind !== 'squares'
      ? ` A robust loss (${loss.kind}${loss.at === undefined ? '' : `, from ${loss.at} standard deviations`}) was used.`
      : ''
  return `Turf was described by the ${fit.law} law of pressure against sinkage, ${equationOf(fit.law)}, softness being the sinkage of a wide plate under 10 kPa. ${forwardSentence(fit)} ${parametersSentence(fit)} ${datum}Parameters were found by damped nonlinear least squares (Swardsink, docs/physics.md §7.1 and §7.2).${robust} ${weightsSentence(question)} ${intervalSentence(question)}`
}
