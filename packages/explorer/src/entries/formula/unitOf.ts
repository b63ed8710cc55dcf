import { isPlain, PLAIN } from './dimension.ts'
import { formulaUnits, type Unit } from './formulaUnits.ts'
import { nearest } from './nearest.ts'
import { namesIn, type Reason, readFormula } from './readFormula.ts'
import { workOut } from './workOut.ts'

export type UnitRead = { readonly ok: true; readonly unit: Unit } | ({ readonly ok: false } & Reason)

/** Units as the catalogue's words have them, and as formulas write them. */
const SPELLINGS: ReadonlyMap<string, string> = new Map([
  ['°', 'deg'],
  ['turns/s', '1/s'],
  ['%', '0.01'],
])

const units = new Map<string, UnitRead>()

function readUnit(text: string): UnitRead {
  const written = SPELLINGS.get(text) ?? text
  if (written === '') return { ok: true, unit: { factor: 1, dimension: PLAIN } }
  const read = readFormula(written)
  if (!read.ok) return { ok: false, reason: 'unit unknown', values: { unit: text, near: '' } }
  const [stranger] = namesIn(read.tree)
  if (stranger !== undefined)
    return {
      ok: false,
      reason: 'unit unknown',
      values: { unit: stranger, near: nearest(stranger, [...formulaUnits.keys()]) },
    }
  const worked = workOut(read.tree, () => null)
  if (!worked.ok || !(worked.value > 0) || (isPlain(worked.dimension) && !isSpelled(text)))
    return { ok: false, reason: 'unit unknown', values: { unit: text, near: '' } }
  return { ok: true, unit: { factor: worked.value, dimension: worked.dimension } }
}

/** A plain number is no unit, but a degree and a hundredth are. */
const isSpelled = (text: string): boolean => SPELLINGS.has(text) || /^(rad|deg)$/.test(text)

/** The unit a text names: one of the list, or a product, quotient or power of them such as kPa/mm. */
export function unitOf(text: string): UnitRead {
  let unit = units.get(text)
  if (!unit) {
    unit = readUnit(text)
    units.set(text, unit)
  }
  return unit
}
