import { type Caution, InputError, type Problem, type Scenario } from '@swardsink/model'
import type { Answer, Entry, Failure, Kind, Kinds, Offered } from '../book/index.ts'
import { keyOf } from './key.ts'
import { neededBy, workingOrder } from './order.ts'
import { EMPTY, type EntryState } from './state.ts'

/** Who does the heavy work. The browser hands in a worker, a test a few lines. */
export type Refiner = {
  refine(job: {
    readonly id: string
    readonly kind: string
    readonly input: unknown
    readonly onProgress: (done: number) => void
    readonly onAnswer: (answer: Answer<unknown>) => void
  }): void
  /** Ends what is being worked out for an entry. */
  drop(id: string): void
}

export type Flow = {
  /**
   * Works out what the change touches; what is quick is done when this returns. With `seen`, only those entries and
   * what they need: the others keep what they have until they are seen.
   */
  update(entries: readonly Entry[], scenario: Scenario, seen?: ReadonlySet<string>): void
  stateOf(id: string): EntryState
  /** The reader does not want to wait: the draft stays. */
  stop(id: string): void
}

type Kept = { readonly key: string; readonly ticket: number; readonly state: EntryState }
type Asked = {
  readonly id: string
  readonly key: string
  readonly input: unknown
  readonly scenario: Scenario
}
type Working = {
  readonly kind: Kind
  readonly scenario: Scenario
  readonly answers: Readonly<Record<string, unknown>>
  readonly entries: readonly Entry[]
  readonly offered: Offered
}

/** What an entry is worked out from, or why that makes no sense. */
function inputOf({ settings }: Entry, { kind, scenario, answers, entries, offered }: Working): unknown {
  try {
    return kind.input({ settings, scenario, answers, entries, offered })
  } catch (error) {
    if (error instanceof InputError) return error
    throw error
  }
}

export function openFlow(q: {
  readonly kinds: Kinds
  readonly refiner: Refiner
  /** Called when an answer comes in later, not for changes made by `update`. */
  readonly onLater: () => void
}): Flow {
  const { kinds, refiner, onLater } = q
  const records = new Map<string, Kept>()
  let tickets = 0
  /** What was last asked: entries that read a late answer are worked out again with it. */
  let again: () => void = () => {}

  function fail(asked: Pick<Asked, 'id' | 'key'>, failure: Failure, cautions: readonly Caution[] = []): void {
    const { id, key } = asked
    const last = records.get(id)?.state ?? EMPTY
    refiner.drop(id)
    records.set(id, {
      key,
      ticket: ++tickets,
      state: {
        ...last,
        status: 'failed',
        failure,
        cautions,
        waitsFor: [],
        stale: last.result !== null,
        draft: false,
      },
    })
  }

  /** The last good answer stays, for what it was worked out from, until the worker has the next. */
  function wait(asked: Asked): void {
    const last = records.get(asked.id)?.state ?? EMPTY
    records.set(asked.id, {
      key: asked.key,
      ticket: ++tickets,
      state: {
        ...last,
        status: 'working',
        stale: last.resultFor !== null,
        draft: false,
        waitsFor: [],
        failure: null,
        progress: 0,
      },
    })
  }

  function take(asked: Asked, answer: Answer<unknown>, draft: boolean): void {
    if (answer.outcome === 'later') {
      wait(asked)
      return
    }
    if (answer.outcome === 'no answer') {
      fail(asked, answer.why, answer.cautions)
      return
    }
    const ticket = ++tickets
    records.set(asked.id, {
      key: asked.key,
      ticket,
      state: {
        status: draft ? 'working' : 'done',
        result: answer.result,
        input: asked.input,
        resultFor: asked.scenario,
        stale: false,
        draft,
        cautions: answer.cautions,
        waitsFor: [],
        failure: null,
        progress: 0,
        edition: ticket,
      },
    })
  }

  /** The draft is right for the values that stand, only coarse: it stays as it is when nothing finer comes. */
  function keepDraft(id: string, failure: Failure): void {
    const record = records.get(id)
    if (record) records.set(id, { ...record, state: { ...record.state, status: 'failed', failure } })
  }

  function refineLater(asked: Asked, kind: string): void {
    const { id } = asked
    const ticket = records.get(id)?.ticket
    /** Null once the entry has been asked something else: what comes then is late, and dropped. */
    const current = (): Kept | null => {
      const record = records.get(id)
      return record?.ticket === ticket ? (record ?? null) : null
    }
    refiner.refine({
      id,
      kind,
      input: asked.input,
      onProgress(done) {
        const record = current()
        if (!record) return
        records.set(id, { ...record, state: { ...record.state, progress: done } })
        onLater()
      },
      onAnswer(answer) {
        const record = current()
        if (!record) return
        const { state } = record
        const scenario = state.draft ? (state.resultFor ?? asked.scenario) : asked.scenario
        if (answer.outcome === 'no answer' && answer.why.kind === 'worker') keepDraft(id, answer.why)
        else take({ ...asked, scenario }, answer, false)
        again()
        onLater()
      },
    })
  }

  function work(entry: Entry, working: Working): void {
    const { kind, scenario, entries } = working
    const problems: readonly Problem[] = kind.problems(entry.settings, scenario, entries)
    if (problems.length > 0) {
      const key = `problems ${JSON.stringify(problems)}`
      fail({ id: entry.id, key }, { kind: 'problems', problems })
      return
    }
    const input = inputOf(entry, working)
    if (input instanceof InputError) {
      const { quantity: path, expected, received } = input
      fail(
        { id: entry.id, key: `input ${input.message}` },
        { kind: 'problems', problems: [{ path, expected, received }] },
      )
      return
    }
    const key = `${entry.kind} ${keyOf(input)}`
    const last = records.get(entry.id)
    if (last?.key === key) {
      // Equal input, equal answer: it holds for the values that now stand as well.
      if (!last.state.stale && last.state.resultFor !== null && last.state.resultFor !== scenario)
        records.set(entry.id, { ...last, state: { ...last.state, resultFor: scenario } })
      return
    }
    const asked = { id: entry.id, key, input, scenario }
    const answer = kind.compute(input)
    const isWhole = answer.outcome === 'answered' && answer.whole === true
    // A job for what was asked before would only keep the worker from others.
    if (isWhole && kind.refine) refiner.drop(entry.id)
    take(asked, answer, kind.refine !== undefined && !isWhole)
    if (records.get(entry.id)?.state.status === 'working') refineLater(asked, kind.kind)
  }

  /** A fault in one kind is told on its entry and reported; it takes no other entry with it. */
  function guarded(entry: Entry, act: () => void): void {
    try {
      act()
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error)
      if (records.get(entry.id)?.key !== `fault ${message}`) queueMicrotask(() => Promise.reject(error))
      fail({ id: entry.id, key: `fault ${message}` }, { kind: 'fault', message })
    }
  }

  function needsOf(entry: Entry, entries: readonly Entry[]): readonly string[] {
    let needs: readonly string[] = []
    guarded(entry, () => {
      needs = kinds[entry.kind]?.needs(entry.settings, entries) ?? []
    })
    return needs
  }

  const flow: Flow = {
    update(all, scenario, seen) {
      again = () => flow.update(all, scenario, seen)
      // Those whose kind is not here yet say nothing that another could read.
      const entries = all.filter(entry => !entry.asWritten)
      const byId = new Map(entries.map(entry => [entry.id, entry]))
      for (const id of records.keys()) {
        if (byId.has(id)) continue
        refiner.drop(id)
        records.delete(id)
      }
      const needs = new Map(entries.map(entry => [entry.id, needsOf(entry, entries)] as const))
      const { order, rings } = workingOrder(seen ? neededBy(seen, needs) : needs)
      for (const id of rings) {
        const received = (needs.get(id) ?? []).join(', ')
        const problem = { path: id, expected: 'entries that do not need each other', received }
        fail({ id, key: 'ring' }, { kind: 'problems', problems: [problem] })
      }
      const answers: Record<string, unknown> = {}
      const offered: Record<string, Offered[string]> = {}
      for (const id of order) {
        const entry = byId.get(id)
        const kind = entry && kinds[entry.kind]
        if (!entry || !kind) continue
        const missing = (needs.get(id) ?? []).filter(needed => !Object.hasOwn(answers, needed))
        if (missing.length > 0) {
          const last = records.get(id)?.state ?? EMPTY
          refiner.drop(id)
          records.set(id, {
            key: 'waiting',
            ticket: ++tickets,
            state: {
              ...last,
              status: 'waiting',
              waitsFor: missing,
              stale: last.result !== null,
              draft: false,
            },
          })
          continue
        }
        guarded(entry, () => work(entry, { kind, scenario, answers, entries, offered }))
        const state = records.get(id)?.state
        if (!state || state.stale || (state.status !== 'done' && state.status !== 'working')) continue
        if (state.resultFor === null) continue
        answers[id] = state.result
        offered[id] = kind.offers?.(state.result) ?? {}
      }
    },
    stateOf: id => records.get(id)?.state ?? EMPTY,
    stop(id) {
      const record = records.get(id)
      if (record?.state.status !== 'working') return
      refiner.drop(id)
      // A draft is right as it stands; without one there is nothing for the values that now stand.
      const ended: Partial<EntryState> = record.state.draft
        ? { status: 'done' }
        : { status: 'failed', failure: { kind: 'reason', reason: 'stopped', values: {} } }
      records.set(id, { ...record, ticket: ++tickets, state: { ...record.state, ...ended } })
    },
  }
  return flow
}
