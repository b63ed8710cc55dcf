import { InputError } from '../../../quantities/index.ts'
import type { ComplianceFailed, ComplianceFit } from '../compliance/complianceFit.ts'
import { fitCompliance } from '../compliance/fitCompliance.ts'
import type { ComplianceQuestion } from '../compliance/question.ts'
import { type Comparison, compareFits } from './compareFits.ts'

export type LawToTry = Pick<ComplianceQuestion, 'law' | 'free' | 'start' | 'bounds'> & {
  /** The kind of the law unless given. */
  readonly name?: string
}

/** What all laws have in common: the readings, the noise, the datum, the unit. */
export type CompareLawsQuestion = Omit<ComplianceQuestion, 'law' | 'free' | 'start' | 'bounds' | 'loss'> & {
  readonly laws: readonly LawToTry[]
}

export type LawComparison = Comparison & {
  /** By name. */
  readonly fits: Readonly<Record<string, ComplianceFit | ComplianceFailed>>
}

const nameOf = ({ name, law }: LawToTry): string => name ?? (typeof law === 'string' ? law : law.kind)

/**
 * Several laws fitted to the same readings, side by side: squares, scatter, AICc with its differences, F of nested
 * laws, and which of them the readings cannot tell apart.
 *
 * Throws  InputError when two laws have one name, or as fitCompliance
 * Source  docs/physics.md §7.3
 */
export function compareLaws({ laws, ...shared }: CompareLawsQuestion): LawComparison {
  const names = laws.map(nameOf)
  const twice = names.find((name, i) => names.indexOf(name) !== i)
  if (names.length === 0 || twice !== undefined)
    throw new InputError({
      path: 'laws',
      expected: 'at least one law, every one with a name of its own',
      received: twice === undefined ? 'none' : `${twice} twice`,
    })
  const fits = laws.map((law, i) => {
    const { name: _, ...asked } = law
    return { name: names[i]!, fit: fitCompliance({ ...shared, ...asked }) }
  })
  return {
    ...compareFits(fits.map(({ name, fit }) => ({ name, law: fit.law, fit }))),
    fits: Object.fromEntries(fits.map(({ name, fit }) => [name, fit])),
  }
}
