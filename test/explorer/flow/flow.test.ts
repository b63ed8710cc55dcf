import { InputError, type Scenario } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { type Answer, type Entry, type Kind, kindsByName } from '../../../packages/explorer/src/book/index.ts'
import { openFlow, type Refiner } from '../../../packages/explorer/src/flow/index.ts'

const roller = { mass: 6.2, diameter: 0.057, length: 0.56, surface: { kind: 'smooth' } } as const
const scenario: Scenario = {
  unit: {
    wheelbase: 0.19,
    edge: 0.105,
    benchHeight: 3.4e-3,
    frontRoller: roller,
    rearRoller: roller,
    body: { mass: 18, at: 0.1 },
  },
  rollers: { one: roller },
  turfs: { green: { law: { kind: 'linear', softness: 0.3e-3 } } },
  turf: 'green',
  condition: { kind: 'standing' },
}
const benchAt = (benchHeight: number): Scenario => ({ ...scenario, unit: { ...scenario.unit, benchHeight } })

type Counted = { computed: number }

/** Answers with the bench height; fails above 10 mm; its fine answer is told apart. */
function benchKind(counted: Counted, fine = false): Kind<'bench', object, number, string> {
  const kind: Kind<'bench', object, number, string> = {
    kind: 'bench',
    read: () => ({}),
    problems: () => [],
    needs: () => [],
    input: q => q.scenario.unit.benchHeight,
    compute(height) {
      counted.computed++
      return height > 0.01
        ? {
            outcome: 'no answer',
            why: { kind: 'bottomed out', where: 'front', load: 150, lockingDepth: 1e-3 },
            cautions: [],
          }
        : { outcome: 'answered', result: `quick ${height}`, cautions: [] }
    },
    section: '',
    check: '',
  }
  return fine ? { ...kind, refine: height => answered(`fine ${height}`) } : kind
}

const answered = (result: string): Answer<string> => ({ outcome: 'answered', result, cautions: [] })

/** Repeats what another entry answered. */
const echo: Kind<'echo', { readonly of: string }, unknown, string> = {
  kind: 'echo',
  read: () => ({ of: '' }),
  problems: () => [],
  needs: settings => [settings.of],
  input: ({ settings, answers }) => answers[settings.of],
  compute: input => answered(`echo of ${String(input)}`),
  section: '',
  check: '',
}

const entry = (id: string, kind: string, settings: object = {}): Entry => ({
  id,
  kind,
  beside: false,
  settings,
})

type Job = Parameters<Refiner['refine']>[0]

function openWith(kinds: readonly Kind[]) {
  const jobs: Job[] = []
  const dropped: string[] = []
  let later = 0
  const flow = openFlow({
    kinds: kindsByName(kinds),
    refiner: { refine: job => jobs.push(job), drop: id => dropped.push(id) },
    onLater: () => later++,
  })
  return { flow, jobs, dropped, later: () => later }
}

describe('the flow of answers', () => {
  it('has the answer when the update returns', () => {
    const { flow } = openWith([benchKind({ computed: 0 })])
    flow.update([entry('a', 'bench')], scenario)
    expect(flow.stateOf('a')).toMatchObject({ status: 'done', result: 'quick 0.0034', stale: false })
  })

  it('works an entry out again only when what it depends on has changed', () => {
    const counted = { computed: 0 }
    const { flow } = openWith([benchKind(counted)])
    flow.update([entry('a', 'bench')], scenario)
    flow.update([entry('a', 'bench')], { ...scenario, condition: { kind: 'mowing', speed: 1 } })
    expect(counted.computed).toBe(1)
    expect(flow.stateOf('a').resultFor?.condition.kind).toBe('mowing')
    flow.update([entry('a', 'bench')], benchAt(4e-3))
    expect(counted.computed).toBe(2)
  })

  it('keeps the last good answer, marked stale, when there is none', () => {
    const { flow } = openWith([benchKind({ computed: 0 })])
    flow.update([entry('a', 'bench')], scenario)
    flow.update([entry('a', 'bench')], benchAt(0.02))
    const state = flow.stateOf('a')
    expect(state).toMatchObject({ status: 'failed', result: 'quick 0.0034', stale: true })
    expect(state.failure).toMatchObject({ kind: 'bottomed out', load: 150 })
    expect(state.resultFor).toBe(scenario)
    flow.update([entry('a', 'bench')], scenario)
    expect(flow.stateOf('a')).toMatchObject({ status: 'done', stale: false, failure: null })
  })

  it('shows the quick answer at once and the fine one when it comes', () => {
    const { flow, jobs, later } = openWith([benchKind({ computed: 0 }, true)])
    flow.update([entry('a', 'bench')], scenario)
    expect(flow.stateOf('a')).toMatchObject({ status: 'working', draft: true, stale: false })
    jobs[0]?.onProgress(0.5)
    expect(flow.stateOf('a').progress).toBe(0.5)
    jobs[0]?.onAnswer(answered('fine'))
    expect(flow.stateOf('a')).toMatchObject({ status: 'done', result: 'fine', draft: false })
    expect(later()).toBe(2)
  })

  it('drops a late answer to a question that no longer stands', () => {
    const { flow, jobs, later } = openWith([benchKind({ computed: 0 }, true)])
    flow.update([entry('a', 'bench')], scenario)
    flow.update([entry('a', 'bench')], benchAt(4e-3))
    jobs[0]?.onAnswer(answered('late'))
    jobs[0]?.onProgress(0.9)
    expect(flow.stateOf('a')).toMatchObject({ status: 'working', result: 'quick 0.004', progress: 0 })
    expect(later()).toBe(0)
    jobs[1]?.onAnswer(answered('in time'))
    expect(flow.stateOf('a').result).toBe('in time')
  })

  it('shows the fine answer for the values that stand when it comes', () => {
    const { flow, jobs } = openWith([benchKind({ computed: 0 }, true)])
    flow.update([entry('a', 'bench')], scenario)
    flow.update([entry('a', 'bench')], { ...scenario, condition: { kind: 'mowing', speed: 1 } })
    jobs[0]?.onAnswer(answered('fine'))
    expect(flow.stateOf('a').result).toBe('fine')
    expect(flow.stateOf('a').resultFor?.condition.kind).toBe('mowing')
  })

  it('keeps the draft as it is, and says why, when the worker cannot go on', () => {
    const { flow, jobs } = openWith([benchKind({ computed: 0 }, true)])
    flow.update([entry('a', 'bench')], scenario)
    jobs[0]?.onAnswer({ outcome: 'no answer', why: { kind: 'worker', message: 'refused' }, cautions: [] })
    expect(flow.stateOf('a')).toMatchObject({
      status: 'failed',
      result: 'quick 0.0034',
      stale: false,
      failure: { kind: 'worker' },
    })
  })

  it('keeps what an answer was worked out from beside it', () => {
    const { flow } = openWith([benchKind({ computed: 0 })])
    flow.update([entry('a', 'bench')], scenario)
    expect(flow.stateOf('a').input).toBe(3.4e-3)
    flow.update([entry('a', 'bench')], benchAt(0.02))
    expect(flow.stateOf('a').input).toBe(3.4e-3)
  })

  it('keeps the draft when the reader does not want to wait', () => {
    const { flow, jobs, dropped } = openWith([benchKind({ computed: 0 }, true)])
    flow.update([entry('a', 'bench')], scenario)
    flow.stop('a')
    expect(dropped).toContain('a')
    jobs[0]?.onAnswer(answered('late'))
    expect(flow.stateOf('a')).toMatchObject({ status: 'done', result: 'quick 0.0034', draft: true })
  })

  it('says what an entry waits for, and works it out when that has an answer', () => {
    const { flow } = openWith([benchKind({ computed: 0 }), echo])
    const entries = [entry('b', 'echo', { of: 'a' }), entry('a', 'bench')]
    flow.update(entries, benchAt(0.02))
    expect(flow.stateOf('b')).toMatchObject({ status: 'waiting', waitsFor: ['a'], result: null })
    flow.update(entries, scenario)
    expect(flow.stateOf('b')).toMatchObject({ status: 'done', result: 'echo of quick 0.0034' })
    flow.update(entries, benchAt(0.02))
    expect(flow.stateOf('b')).toMatchObject({
      status: 'waiting',
      stale: true,
      result: 'echo of quick 0.0034',
    })
  })

  it('works out again what reads an answer that came late', () => {
    const { flow, jobs } = openWith([benchKind({ computed: 0 }, true), echo])
    flow.update([entry('a', 'bench'), entry('b', 'echo', { of: 'a' })], scenario)
    jobs[0]?.onAnswer(answered('fine'))
    expect(flow.stateOf('b').result).toBe('echo of fine')
  })

  it('fails entries that need each other, with their names', () => {
    const { flow } = openWith([echo])
    flow.update([entry('a', 'echo', { of: 'b' }), entry('b', 'echo', { of: 'a' })], scenario)
    expect(flow.stateOf('a')).toMatchObject({ status: 'failed', failure: { kind: 'problems' } })
  })

  it('fails an entry that cannot even be asked, with the reason', () => {
    const refusing = benchKind({ computed: 0 })
    const { flow } = openWith([
      {
        ...refusing,
        input() {
          throw new InputError({
            path: 'softness',
            expected: 'less than the locking depth',
            received: '5 mm',
          })
        },
      },
    ])
    flow.update([entry('a', 'bench')], scenario)
    expect(flow.stateOf('a').failure).toMatchObject({ kind: 'problems', problems: [{ path: 'softness' }] })
  })

  it('drops the work of an entry that was taken out', () => {
    const { flow, dropped } = openWith([benchKind({ computed: 0 }, true)])
    flow.update([entry('a', 'bench')], scenario)
    flow.update([], scenario)
    expect(dropped).toContain('a')
    expect(flow.stateOf('a').status).toBe('waiting')
  })
})

/** Too dear for a frame: only the worker answers, with the bench height. */
const dear: Kind<'dear', object, number, string> = {
  ...benchKind({ computed: 0 }),
  kind: 'dear',
  compute: height =>
    height < 3e-3
      ? { outcome: 'answered', result: `at once ${height}`, cautions: [], whole: true }
      : { outcome: 'later' },
  refine: height => answered(`worked ${height}`),
}

describe('an answer that comes later', () => {
  it('is waited for, with nothing shown and nothing handed on before it is there', () => {
    const { flow, jobs } = openWith([dear, echo])
    const entries = [entry('a', 'dear'), entry('b', 'echo', { of: 'a' })]
    flow.update(entries, scenario)
    expect(flow.stateOf('a')).toMatchObject({ status: 'working', result: null, stale: false, draft: false })
    expect(flow.stateOf('b')).toMatchObject({ status: 'waiting', waitsFor: ['a'] })
    jobs[0]?.onAnswer(answered('worked'))
    expect(flow.stateOf('a')).toMatchObject({ status: 'done', result: 'worked', stale: false })
    expect(flow.stateOf('b')).toMatchObject({ status: 'done', result: 'echo of worked' })
  })

  it('leaves the last one standing, marked as of other values', () => {
    const { flow, jobs } = openWith([dear, echo])
    const entries = [entry('a', 'dear'), entry('b', 'echo', { of: 'a' })]
    flow.update(entries, scenario)
    jobs[0]?.onAnswer(answered('first'))
    flow.update(entries, benchAt(5e-3))
    expect(flow.stateOf('a')).toMatchObject({ status: 'working', result: 'first', stale: true })
    expect(flow.stateOf('a').resultFor).toBe(scenario)
    expect(flow.stateOf('b')).toMatchObject({ status: 'waiting', result: 'echo of first', stale: true })
    jobs[1]?.onAnswer(answered('second'))
    expect(flow.stateOf('a').resultFor?.unit.benchHeight).toBe(5e-3)
    expect(flow.stateOf('b')).toMatchObject({ status: 'done', result: 'echo of second', stale: false })
  })

  it('is not asked for where the quick one is whole', () => {
    const { flow, jobs } = openWith([dear])
    flow.update([entry('a', 'dear')], benchAt(2e-3))
    expect(flow.stateOf('a')).toMatchObject({ status: 'done', result: 'at once 0.002', draft: false })
    expect(jobs).toHaveLength(0)
  })

  it('says that it was stopped, where a draft would stand', () => {
    const { flow } = openWith([dear])
    flow.update([entry('a', 'dear')], scenario)
    flow.stop('a')
    expect(flow.stateOf('a')).toMatchObject({ status: 'failed', failure: { reason: 'stopped' } })
  })
})

describe('what is not as it should be', () => {
  /** Reads the settings of every other entry, as kinds do that call others by name. */
  const nosy: Kind<'nosy', object, number, string> = {
    ...benchKind({ computed: 0 }),
    kind: 'nosy',
    needs: (_, entries) => {
      for (const { settings } of entries)
        if (!('word' in settings)) throw new Error('an entry without a word')
      return []
    },
  }
  const worded = (id: string, kind: string) => entry(id, kind, { word: 'said' })

  it('an entry whose kind is not here yet is no entry to the others', () => {
    const { flow } = openWith([nosy])
    const coming: Entry = { ...entry('b', 'formula'), asWritten: { kind: 'formula', word: 'said' } }
    flow.update([worded('a', 'nosy'), coming], scenario)
    expect(flow.stateOf('a').status).toBe('done')
  })

  it('a fault in one kind is told on its entry, reported once, and takes no other with it', async () => {
    const reported: unknown[] = []
    const hear = (error: unknown) => reported.push(error)
    const others = process.listeners('unhandledRejection')
    process.removeAllListeners('unhandledRejection')
    process.on('unhandledRejection', hear)
    try {
      const broken: Kind<'broken', object, number, string> = {
        ...benchKind({ computed: 0 }),
        kind: 'broken',
        compute: () => {
          throw new TypeError('of a slip')
        },
      }
      const { flow } = openWith([broken, benchKind({ computed: 0 })])
      for (let time = 0; time < 2; time++) flow.update([entry('a', 'broken'), entry('b', 'bench')], scenario)
      await new Promise(resolve => setTimeout(resolve))
      expect(flow.stateOf('a').failure).toEqual({ kind: 'fault', message: 'of a slip' })
      expect(flow.stateOf('b').status).toBe('done')
      expect(reported).toEqual([new TypeError('of a slip')])
    } finally {
      process.removeListener('unhandledRejection', hear)
      for (const other of others) process.on('unhandledRejection', other)
    }
  })
})
