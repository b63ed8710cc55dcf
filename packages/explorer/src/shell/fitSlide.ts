import type { ReactiveControllerHost } from 'lit'

/** Narrower than this a figure loses more than a scroll bar would cost. */
const LEAST = 0.5
const TRIES = 4
/** A hair less than what would just fit, so that rounding does not ask for one more try. */
const ROOM = 0.985

/** What the body of a slide keeps free at its edges, for the outline of what has the focus, px. */
const EDGES = 8

export type SlideFit = {
  overflows(): boolean
  /** The height there is, px; null where the slide is as tall as what is on it. */
  room(): number | null
}

/**
 * Makes what a slide draws as narrow as it must be to fit the height. Figures are laid out for their width, never
 * scaled: a narrower one is also lower. What gets taller by it, as text does, keeps the whole width and scrolls.
 */
export function fitSlide(host: ReactiveControllerHost & Element): SlideFit {
  let share = 1
  let tries = 0
  let tallest = 0
  let overflows = false
  let room: number | null = null
  let drawn: HTMLElement | null = null

  const body = (): HTMLElement | null => host.shadowRoot?.querySelector<HTMLElement>('.body') ?? null

  function lay(next: number): void {
    share = next
    if (!drawn) return
    drawn.style.width = share === 1 ? '' : `${share * 100}%`
    drawn.classList.toggle('narrow', share < 1)
  }

  function measure(): void {
    const box = body()
    if (!box || !drawn) return
    const { clientHeight: height, scrollHeight: needed } = box
    const scrolls = getComputedStyle(box).overflowY === 'auto'
    const isOver = scrolls && needed > height + 1
    if (isOver && tries < TRIES) {
      tries++
      if (tries > 1 && needed >= tallest) {
        // It did not help: the whole width again, and no more tries.
        tries = TRIES
        lay(1)
      } else {
        tallest = needed
        lay(Math.max(LEAST, share * (height / needed) * ROOM))
      }
    }
    if (isOver !== overflows) {
      overflows = isOver
      host.requestUpdate()
    }
  }

  function begin(): void {
    const box = body()
    const scrolls = box !== null && getComputedStyle(box).overflowY === 'auto'
    const next = scrolls ? box.clientHeight - EDGES : null
    if (next !== room) {
      room = next
      host.requestUpdate()
    }
    tries = 0
    tallest = 0
    lay(1)
  }

  const watch = new ResizeObserver(measure)
  function resized(): void {
    begin()
    measure()
  }

  host.addController({
    hostConnected: () => window.addEventListener('resize', resized),
    hostUpdated() {
      const next = body()?.querySelector<HTMLElement>('.drawn') ?? null
      if (next === drawn) return
      if (drawn) watch.unobserve(drawn)
      drawn = next
      begin()
      if (drawn) watch.observe(drawn)
    },
    hostDisconnected() {
      window.removeEventListener('resize', resized)
      watch.disconnect()
      drawn = null
    },
  })
  return { overflows: () => overflows, room: () => room }
}
