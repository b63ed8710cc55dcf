/** One event of a browser's trace, as far as it is looked at. Times are microseconds. */
export type TraceEvent = {
  readonly name: string
  readonly ph: string
  readonly pid: number
  readonly tid: number
  readonly ts: number
  readonly dur?: number
  /** Time of the thread itself, without what others took of its core. */
  readonly tdur?: number
}

type Task = { readonly from: number; readonly to: number; readonly work: number; readonly paints: boolean }

const TASKS = ['RunTask', 'ThreadControllerImpl::RunTask']
/** What a task does that hands a frame over to be shown. */
const SHOWN = ['Commit', 'ProxyMain::BeginMainFrame::commit', 'LayerTreeHost::DoUpdateLayers', 'Layerize']

const endOf = (event: TraceEvent): number => event.ts + (event.dur ?? 0)

/** Tasks of the thread on which the marks were set, in order, none inside another. */
function tasksOf(events: readonly TraceEvent[], mark: TraceEvent): readonly Task[] {
  const here = events.filter(({ pid, tid }) => pid === mark.pid && tid === mark.tid)
  const shows = here.filter(({ name }) => SHOWN.includes(name)).map(({ ts }) => ts)
  const runs = here
    .filter(({ name, ph }) => ph === 'X' && TASKS.includes(name))
    .sort((a, b) => a.ts - b.ts || endOf(b) - endOf(a))
  const tasks: Task[] = []
  for (const run of runs) {
    const to = endOf(run)
    if (run.ts < (tasks.at(-1)?.to ?? 0)) continue
    const paints = shows.some(ts => ts >= run.ts && ts <= to)
    tasks.push({ from: run.ts, to, work: run.tdur ?? run.dur ?? 0, paints })
  }
  return tasks
}

export type KeyWork = {
  /** Work of the main thread from the key to the frame that shows its effect, ms. */
  readonly toFrame_ms: number
  /** And all of it until the next key, finer answers of the worker counted in. */
  readonly all_ms: number
}

/** What each mark of this name cost the thread it was set on. The last one is left out: nothing ends it. */
export function workPerMark(events: readonly TraceEvent[], name: string): readonly KeyWork[] {
  const marks = events.filter(event => event.name === name && event.ph !== 'e' && event.ph !== 'E')
  const [first] = marks
  if (!first) throw new Error(`no mark ${name} in the trace`)
  const tasks = tasksOf(events, first)
  const times = marks.map(({ ts }) => ts).sort((a, b) => a - b)
  return times.slice(0, -1).flatMap((from, at) => {
    const until = times[at + 1] ?? Number.POSITIVE_INFINITY
    const during = tasks.filter(
      task => task.to >= from && task.from < until && task.to < until + (task.to - task.from),
    )
    const shown = during.findIndex(task => task.paints)
    if (shown < 0) return []
    const sum = (list: readonly Task[]) => list.reduce((work, task) => work + task.work, 0) / 1000
    return [
      { toFrame_ms: sum(during.slice(0, shown + 1)), all_ms: sum(during.filter(task => task.from < until)) },
    ]
  })
}
