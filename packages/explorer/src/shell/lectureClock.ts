import type { ReactiveControllerHost } from 'lit'

const A_MINUTE = 60_000
/** Often enough that a minute never stands for much longer than a minute. */
const LOOKED_AT_EVERY = 5_000

export type LectureClock = {
  /** Whole minutes left of so many; null while the time has not begun. Negative when it is over. */
  left(minutes: number): number | null
  readonly begin: () => void
  beginOnce(): void
}

/** The time of a lecture, which begins with its first turn. */
export function lectureClock(host: ReactiveControllerHost): LectureClock {
  let since: number | null = null
  let timer: ReturnType<typeof setInterval> | undefined
  const begin = (): void => {
    since = performance.now()
    host.requestUpdate()
  }
  host.addController({
    hostConnected() {
      timer = setInterval(() => since !== null && host.requestUpdate(), LOOKED_AT_EVERY)
    },
    hostDisconnected: () => clearInterval(timer),
  })
  return {
    left: minutes => (since === null ? null : Math.ceil(minutes - (performance.now() - since) / A_MINUTE)),
    begin,
    beginOnce() {
      if (since === null) begin()
    },
  }
}
