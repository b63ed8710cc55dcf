import { catalogue, type Scenario } from '@swardsink/model'
import type { Entry, Kind, LiveValue } from '../../book/index.ts'
import { givenTo, giverOf, nameGivenBy } from '../given.ts'
import { settledInput, settledOf } from '../settled.ts'
import { liveValue, valueNames } from '../text/values.ts'
import { nameOf, same } from './dimension.ts'
import { proposedUnit } from './formulaUnits.ts'
import { nearest } from './nearest.ts'
import { namesIn, type Read, type Reason, readFormula } from './readFormula.ts'
import { ringOf } from './ringOf.ts'
import { unitOf } from './unitOf.ts'
import { type Amount, workOut } from './workOut.ts'

export type FormulaSettings = {
  readonly name: string
  /** What it is worked out from. */
  readonly from: string
  /** The unit it is told in; empty: a usual one of its kind. */
  readonly in: string
}

export type FormulaInput = {
  readonly settings: FormulaSettings
  /** Why there can be no value, whatever the numbers are; null when there can. */
  readonly refused: Reason | null
  readonly known: Readonly<Record<string, LiveValue>>
  /** What the book's other formulas are called. */
  readonly others: readonly string[]
}

/** What a formula was worked out from: a name and what it stands for. */
export type Part = { readonly name: string; readonly live: LiveValue }

/** Either way there are fields to draw, so a reason is an answer too. */
export type FormulaResult = {
  readonly parts: readonly Part[]
  readonly others: readonly string[]
  readonly worked:
    | { readonly outcome: 'value'; readonly value: number; readonly unit: string }
    | ({ readonly outcome: 'none' } & Reason)
}

const NAME = /^[A-Za-z][A-Za-z0-9_]*$/

const read = new Map<string, Read>()
const MOST_KNOWN = 200

/** The tree of a text; the last few are kept, since a slider asks for the same one again and again. */
function treeOf(from: string, names: readonly string[]): Read {
  const key = `${from}\n${names.join('\n')}`
  let found = read.get(key)
  if (!found) {
    found = readFormula(from, name => names.includes(name))
    read.set(key, found)
    const [oldest] = read.keys()
    if (read.size > MOST_KNOWN && oldest !== undefined) read.delete(oldest)
  }
  return found
}

/** Every name a formula of this book can call. */
export function callableNames(entries: readonly Entry[]): readonly string[] {
  return [...valueNames(), ...entries.map(nameGivenBy).filter(name => name !== '')]
}

export const namesCalled = (from: string, entries: readonly Entry[]): readonly string[] => {
  const found = treeOf(from, callableNames(entries))
  return found.ok ? namesIn(found.tree) : []
}

const no = (reason: string, values: Reason['values'] = {}): Reason => ({ reason, values })

/** What is wrong with a name, a text or a unit, whatever the numbers are. */
function refusalOf(settings: FormulaSettings, entries: readonly Entry[]): Reason | null {
  const { name, from } = settings
  const found = treeOf(from, callableNames(entries))
  if (!found.ok) return no(found.reason, found.values)
  if (name === '') return no('formula has no name')
  if (!NAME.test(name)) return no('name cannot be used', { name })
  const twice = entries.filter(entry => nameGivenBy(entry) === name).length > 1
  if (twice || valueNames().includes(name) || unitOf(name).ok || name === 'pi')
    return no('name is taken', { name })
  const ring = ringOf(name, { entries, calledBy: text => namesCalled(text, entries) })
  if (ring.length > 0) return no('circle', { names: ring.join(', ') })
  const stranger = namesIn(found.tree).find(
    called => !valueNames().includes(called) && !giverOf(called, entries),
  )
  if (stranger === undefined) return null
  return no('name unknown', { name: stranger, near: nearest(stranger, callableNames(entries)) })
}

/** What each called name stands for just now. */
function known(
  names: readonly string[],
  scenario: Scenario,
  given: Readonly<Record<string, LiveValue>>,
): Readonly<Record<string, LiveValue>> {
  const input = settledInput(scenario)
  const settled = settledOf(scenario)
  return Object.fromEntries(
    names.flatMap(name => {
      const here =
        (Object.hasOwn(given, name) ? given[name] : undefined) ??
        liveValue(name, { scenario, settled: settled.outcome === 'settled' ? settled : null, input })
      return here ? [[name, here]] : []
    }),
  )
}

/** A live value as a number of SI units with its dimension; null while it is not known. */
function amountOf(live: LiveValue | undefined): Amount | null {
  if (!live || live.value === null) return null
  const unit = 'quantity' in live ? catalogue[live.quantity].metric.unit : live.unit
  const of = unitOf(unit)
  if (!of.ok) return null
  return {
    value: 'quantity' in live ? live.value : live.value * of.unit.factor,
    dimension: of.unit.dimension,
  }
}

function work({ settings, refused, known: lives }: FormulaInput): FormulaResult['worked'] {
  if (refused) return { outcome: 'none', ...refused }
  const found = treeOf(settings.from, Object.keys(lives))
  if (!found.ok) return { outcome: 'none', reason: found.reason, values: found.values }
  const worked = workOut(found.tree, name => amountOf(Object.hasOwn(lives, name) ? lives[name] : undefined))
  if (!worked.ok) return { outcome: 'none', reason: worked.reason, values: worked.values }
  if (!Number.isFinite(worked.value)) return { outcome: 'none', reason: 'not a number', values: {} }
  const proposal = proposedUnit(worked.dimension)
  const unit = settings.in.trim() === '' ? proposal : settings.in.trim()
  const told = unitOf(unit)
  if (!told.ok) return { outcome: 'none', reason: told.reason, values: told.values }
  if (!same(told.unit.dimension, worked.dimension))
    return {
      outcome: 'none',
      reason: 'unit does not fit',
      values: { unit, received: nameOf(worked.dimension), proposal },
    }
  const value = worked.value / told.unit.factor
  return Number.isFinite(value)
    ? { outcome: 'value', value, unit }
    : { outcome: 'none', reason: 'not a number', values: {} }
}

/** A value that a reader writes, with its unit, over what is set, what follows from it, and other such values. */
export const formula: Kind<'formula', FormulaSettings, FormulaInput, FormulaResult> = {
  kind: 'formula',
  read: fields => ({
    name: fields.text('name', ''),
    from: fields.text('from', ''),
    in: fields.text('in', ''),
  }),
  whenAdded: ({ entries }) => {
    const names = entries.map(nameGivenBy)
    let number = 1
    while (names.includes(`value${number}`)) number++
    return { name: `value${number}`, from: 'front.load / frontRoller.diameter', in: 'N/mm' }
  },
  problems: () => [],
  // Those that need each other in a ring are told so; the flow would only wait for them.
  needs: ({ name, from }, entries) =>
    ringOf(name, { entries, calledBy: text => namesCalled(text, entries) }).length > 0
      ? []
      : namesCalled(from, entries).flatMap(called => giverOf(called, entries)?.id ?? []),
  input({ settings, scenario, entries, offered }) {
    const names = namesCalled(settings.from, entries)
    return {
      settings,
      refused: refusalOf(settings, entries),
      known: known(names, scenario, givenTo(names, { entries, offered })),
      others: entries.map(nameGivenBy).filter(name => name !== '' && name !== settings.name),
    }
  },
  compute: input => ({
    outcome: 'answered',
    result: {
      parts: Object.entries(input.known).map(([name, live]) => ({ name, live })),
      others: input.others,
      worked: work(input),
    },
    cautions: [],
  }),
  offers: ({ worked }) => ({
    value:
      worked.outcome === 'value' ? { value: worked.value, unit: worked.unit } : { value: null, unit: '' },
  }),
  section: '§1',
  check: 'test/explorer/entries/formula.test.ts',
}
