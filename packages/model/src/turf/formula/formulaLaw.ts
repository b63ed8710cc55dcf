import type { Metres, Problem } from '../../quantities/index.ts'
import { lawProblems } from '../law.ts'
import { checkedRange, type FormulaLaw } from '../laws/formula.ts'
import type { FormulaRange } from './formulaRange.ts'
import { textProblems, valueProblems } from './formulaText.ts'

export type FormulaMade =
  | { readonly ok: true; readonly law: FormulaLaw; readonly range: FormulaRange }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/**
 * A law from an expression: pressure in Pa, of the sinkage z in m, pi and named values.
 *
 * The parser is fetched when the first expression is read. It only parses: an allow-list of its nodes (numbers, names,
 * brackets, + − × ÷ ^ and the functions sqrt, cbrt, exp, expm1, log, log1p, log10, sin, cos, tan, atan, sinh, cosh,
 * tanh, abs, min, max) becomes a program that the model runs itself. Two factors take a sign between them.
 *
 * Holds   zero at zero, finite and increasing up to 200 kPa, or down to `deepest` (50 mm) if that comes first
 * Throws  nothing: every problem comes back, with the place where the expression fails
 */
export async function formulaLaw(
  written: {
    readonly expression: string
    readonly values?: Readonly<Record<string, number>>
    readonly stretch?: number
    readonly deepest?: Metres
  },
  path = 'law',
): Promise<FormulaMade> {
  const { expression, values = {}, stretch, deepest } = written
  const problems = [
    ...textProblems(expression, `${path}.expression`),
    ...valueProblems(values, `${path}.values`),
  ]
  if (problems.length > 0) return { ok: false, problems }
  const { parseFormula } = await import('./parseFormula.ts')
  const parsed = parseFormula(expression, Object.keys(values), `${path}.expression`)
  if (!parsed.ok) return parsed
  const law: FormulaLaw = {
    kind: 'formula',
    expression,
    values: { ...values },
    ...(stretch === undefined ? {} : { stretch }),
    ...(deepest === undefined ? {} : { deepest }),
    program: parsed.program,
  }
  const found = lawProblems(law, path)
  if (found.length > 0) return { ok: false, problems: found }
  const checked = checkedRange(law)
  return checked.ok
    ? { ok: true, law, range: checked.range }
    : { ok: false, problems: [{ path: `${path}.expression`, ...checked.problem }] }
}
