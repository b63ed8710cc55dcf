import { describe, type Metres, numberProblem, type Problem } from '../../quantities/index.ts'
import { formulaCurve } from '../formula/formulaCurve.ts'
import { type Checked, checkRange } from '../formula/formulaRange.ts'
import { textProblems, valueProblems } from '../formula/formulaText.ts'
import { isProgram, type Program } from '../formula/program.ts'
import { type Curve, type LawKind, REFERENCE_PRESSURE } from './lawKind.ts'
import { stretchedCurve } from './stretchedCurve.ts'

export type FormulaLaw = {
  readonly kind: 'formula'
  /** Pressure in Pa, of z in m and the named values. */
  readonly expression: string
  readonly values: Readonly<Record<string, number>>
  /** Every pressure stands at this many times the depth the expression says; 1 unless given. */
  readonly stretch?: number
  /** Depth down to which the expression is checked if it bears no 200 kPa before; 50 mm unless given. */
  readonly deepest?: Metres
  /** The expression as the model runs it: made by formulaLaw, never read from a file. */
  readonly program: Program
}

export const DEEPEST: Metres = 50e-3

type Made = {
  readonly program: Program
  readonly deepest: Metres
  readonly checked: Checked
  curve: Curve | undefined
  softness: Metres | undefined
}

/** By the values, which a stretched copy of a law shares with it. */
const made = new WeakMap<FormulaLaw['values'], Made>()

const parametersOf = ({ program, values }: FormulaLaw): Float64Array =>
  Float64Array.from(program.names, name => values[name] ?? Number.NaN)

function madeOf(law: FormulaLaw): Made {
  const { program, values, deepest = DEEPEST } = law
  const known = made.get(values)
  if (known && known.program === program && known.deepest === deepest) return known
  const checked = checkRange(program, parametersOf(law), deepest)
  const fresh: Made = { program, deepest, checked, curve: undefined, softness: undefined }
  made.set(values, fresh)
  return fresh
}

/** The law as written, unstretched. */
function writtenCurve(law: FormulaLaw): Curve {
  const here = madeOf(law)
  if (!here.checked.ok) throw new Error(`${law.expression}: ${here.checked.problem.expected}`)
  here.curve ??= formulaCurve(law.program, parametersOf(law), here.checked.range)
  return here.curve
}

/** Searched for once: everything a roller is asked begins with it. */
function writtenSoftness(law: FormulaLaw): Metres {
  const here = madeOf(law)
  here.softness ??= writtenCurve(law).sinkage(REFERENCE_PRESSURE)
  return here.softness
}

export const checkedRange = (law: FormulaLaw): Checked => madeOf(law).checked

function problems(law: FormulaLaw, path: string): Problem[] {
  const { expression, values, stretch, deepest, program } = law
  const first = [
    ...textProblems(expression, `${path}.expression`),
    ...valueProblems(values, `${path}.values`),
    ...(stretch === undefined ? [] : numberProblem(stretch, `${path}.stretch`, 'ratio', { above: 0 })),
    ...(deepest === undefined ? [] : numberProblem(deepest, `${path}.deepest`, 'sinkage', { above: 0 })),
  ]
  if (first.length > 0) return first
  if (!isProgram(program))
    return [{ path: `${path}.program`, expected: 'a law made by formulaLaw', received: describe(program) }]
  const missing = program.names.filter(name => !Object.hasOwn(values, name))
  if (missing.length > 0)
    return missing.map(name => ({
      path: `${path}.values.${name}`,
      expected: 'a number',
      received: 'nothing',
    }))
  const { checked } = madeOf(law)
  return checked.ok ? [] : [{ path: `${path}.expression`, ...checked.problem }]
}

const curves = new WeakMap<FormulaLaw, Curve>()

/**
 * The reader's own law.
 *
 *   p(z) as written, z in m, p in Pa; past the range checked its last slope is continued
 *
 * Holds   zero at zero, finite and increasing up to 200 kPa or down to `deepest`; beyond, marked extrapolated
 */
export const formula: LawKind<FormulaLaw> = {
  kind: 'formula',
  equation: 'p(z) as written',
  source: 'its writer',
  parameters: [],
  written: true,
  problems,
  softness: law => (law.stretch ?? 1) * writtenSoftness(law),
  stretched: (law, factor) => ({ ...law, stretch: factor * (law.stretch ?? 1) }),
  curve: law => {
    let known = curves.get(law)
    if (!known) {
      known = stretchedCurve(writtenCurve(law), law.stretch ?? 1)
      curves.set(law, known)
    }
    return known
  },
}
