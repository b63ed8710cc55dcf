import type { QuantityName, Scenario } from '@swardsink/model'
import { type Kind, type LiveValue, type Offered, settable } from '../../book/index.ts'
import { givenTo, giverOf, giversOf } from '../given.ts'
import { settledInput, settledOf } from '../settled.ts'
import { namesIn } from '../text/prose.ts'
import { isValueName, liveValue } from '../text/values.ts'
import { otherwise } from './otherwise.ts'
import { type QuestionSettings, readQuestion } from './settings.ts'

export type QuestionInput = Pick<QuestionSettings, 'asks' | 'of' | 'change' | 'options' | 'state'> & {
  readonly scenario: Scenario
  /** With the change made; null where the question makes none. */
  readonly changed: Scenario | null
  /** Why the change cannot be made; null when it can. */
  readonly refused: string | null
  readonly names: readonly string[]
  /** What other entries give. */
  readonly given: Readonly<Record<string, LiveValue>>
}

export type Told = { readonly quantity: QuantityName } | { readonly unit: string }

export type QuestionResult = {
  /** By name, for the sentences; `then.` in front: with the change made. */
  readonly values: Readonly<Record<string, LiveValue>>
  /** What the prediction is told in. */
  readonly told: Told
  /** null where the model has none. */
  readonly answer: number | null
  /** Without the change, on the same scale; null where there is no such thing to show. */
  readonly now: number | null
  /** The right one of the options; null where a number is asked for, or none is right. */
  readonly right: number | null
  readonly refused: string | null
  readonly revealed: boolean
  /** Diameter of the roller whose sinkage is asked for; null for anything else. */
  readonly roller: { readonly diameter: number; readonly at: 'front' | 'rear' } | null
}

const THEN = 'then.'

/** Names without the word that asks for them as they would be. */
const plainName = (name: string): string => (name.startsWith(THEN) ? name.slice(THEN.length) : name)

const namesOf = ({ question, because, asks }: QuestionSettings): readonly string[] => [
  ...new Set([asks, ...namesIn(question), ...namesIn(because)]),
]

function readerOf(scenario: Scenario, given: QuestionInput['given']): (name: string) => LiveValue | null {
  const input = settledInput(scenario)
  const settled = settledOf(scenario)
  const q = { scenario, settled: settled.outcome === 'settled' ? settled : null, input }
  return name => given[name] ?? liveValue(name, q)
}

function toldOf(live: LiveValue | null, of: QuestionSettings['of']): Told {
  if (of === 'ratio' || !live) return { unit: '' }
  return 'quantity' in live ? { quantity: live.quantity } : { unit: live.unit }
}

/** The asked part of a value before the change and after it. */
function partOf(of: QuestionSettings['of'], before: number | null, after: number | null): number | null {
  if (of === 'value') return after
  if (before === null || after === null) return null
  if (of === 'difference') return after - before
  return before === 0 ? null : after / before
}

/** The option that the value lies in; without any ends, the one that is marked. */
function rightOf(options: QuestionInput['options'], answer: number | null): number | null {
  const bounded = options.some(({ from, to }) => from !== null || to !== null)
  const right = options.findIndex(({ from, to, right }) =>
    bounded ? answer !== null && (from === null || answer >= from) && (to === null || answer < to) : right,
  )
  return right < 0 ? null : right
}

const ROLLERS = { 'front.sinkage': 'front', 'rear.sinkage': 'rear' } as const
const isSinkage = (name: string): name is keyof typeof ROLLERS => Object.hasOwn(ROLLERS, name)

function answerTo(input: QuestionInput): QuestionResult {
  const { scenario, changed, asks, of, options, names, given, change, state } = input
  const asStands = readerOf(scenario, given)
  const asChanged = changed ? readerOf(changed, {}) : asStands
  const before = asStands(asks)
  const after = change ? asChanged(asks) : before
  const answer = input.refused ? null : partOf(of, before?.value ?? null, after?.value ?? null)
  const values = Object.fromEntries(
    names.flatMap(name => {
      const live = name.startsWith(THEN) ? asChanged(plainName(name)) : asStands(name)
      return live ? [[name, live]] : []
    }),
  )
  const changedName = change && settable(change.name)
  const set =
    change && changedName?.kind === 'quantity'
      ? {
          [change.name]: { quantity: changedName.quantity, value: changedName.value(scenario) },
          [THEN + change.name]: {
            quantity: changedName.quantity,
            value: changed && changedName.value(changed),
          },
        }
      : {}
  const at = isSinkage(asks) && of === 'value' ? ROLLERS[asks] : null
  const unit = (changed ?? scenario).unit
  const roller = at && (at === 'front' ? unit.frontRoller : unit.rearRoller)
  return {
    values: { ...set, ...values },
    told: toldOf(before ?? after, of),
    answer,
    now: change && of === 'value' ? (before?.value ?? null) : null,
    right: rightOf(options, answer),
    refused: input.refused,
    revealed: state === 'revealed',
    roller: roller && at ? { diameter: roller.diameter, at } : null,
  }
}

/** A prediction made before the model answers: said, locked, revealed, with its signed error. */
export const question: Kind<'question', QuestionSettings, QuestionInput, QuestionResult> = {
  kind: 'question',
  read: readQuestion,
  whenAdded: () => ({ change: { name: 'frontRoller.mass', times: 2 } }),
  problems(settings, _, entries) {
    const known = (name: string) => isValueName(name) || (giverOf(name, entries) && !settings.change)
    const inWords = [...namesIn(settings.question), ...namesIn(settings.because)]
    return [
      ...(known(settings.asks)
        ? []
        : [{ path: 'asks', expected: 'the name of a value', received: settings.asks }]),
      ...inWords
        .filter(name => !isValueName(plainName(name)) && !giverOf(name, entries))
        .map(name => ({ path: 'question', expected: 'the name of a value', received: name })),
    ]
  },
  holdsBack: ({ state }) => state !== 'revealed',
  needs: (settings, entries) => giversOf(namesOf(settings), entries),
  input({ settings, scenario, entries, offered }) {
    const { asks, of, change, options, state } = settings
    const made = change && otherwise(scenario, change)
    const names = namesOf(settings)
    return {
      asks,
      of,
      change,
      options,
      state,
      scenario,
      changed: made?.ok ? made.scenario : null,
      refused: made && !made.ok ? made.reason : null,
      names,
      given: givenOf(names, { entries, offered }),
    }
  },
  compute: input => ({ outcome: 'answered', result: answerTo(input), cautions: [] }),
  // What is not revealed is not told to any other entry either.
  offers: ({ revealed, answer, told }) => ({ answer: { ...told, value: revealed ? answer : null } }),
  workedOut({ input, result: { answer, revealed, told }, format }) {
    if (!revealed || answer === null) return []
    const text = (value: number) =>
      'quantity' in told ? format(value, told.quantity) : `${Number(value.toPrecision(4))}\u202f${told.unit}`
    return [{ what: 'questionAnswer', equation: input.asks, filled: text(answer) }]
  },
  section: '§4',
  check: 'test/explorer/entries/question.test.ts',
}

const givenOf = (
  names: readonly string[],
  q: { readonly entries: Parameters<typeof giversOf>[1]; readonly offered: Offered },
): QuestionInput['given'] => givenTo(names, q)
