import type { ReactiveControllerHost } from 'lit'

/** 180 mm, px: what A4 leaves between margins of 15 mm; Letter leaves 6 mm more. */
export const PAPER_WIDTH = 680

/**
 * The width an element has for a figure, px, followed as it changes. Figures are laid out for their width, never
 * scaled to it. On paper it is no wider than the paper.
 */
export function watchWidth(host: ReactiveControllerHost & Element, selector?: string): () => number {
  let width = 0
  let watched: Element | null = null
  let onPaper = false
  const measure = (): number => (watched ? Math.floor(watched.getBoundingClientRect().width) : 0)
  const observer = new ResizeObserver(() => {
    if (measure() === width) return
    width = measure()
    host.requestUpdate()
  })
  const watch = (): void => {
    const next = selector ? (host.shadowRoot?.querySelector(selector) ?? null) : host
    if (next === watched) return
    if (watched) observer.unobserve(watched)
    watched = next
    if (watched) observer.observe(watched)
  }
  // What is asked for here is done before the browser lays the paper out.
  const lay = (paper: boolean) => (): void => {
    onPaper = paper
    if (width > PAPER_WIDTH) host.requestUpdate()
  }
  const [before, after] = [lay(true), lay(false)]
  host.addController({
    hostConnected() {
      window.addEventListener('beforeprint', before)
      window.addEventListener('afterprint', after)
      watch()
    },
    hostUpdated() {
      watch()
      // The first drawing has no width yet: it is measured and drawn before the browser paints.
      if (watched && width === 0) {
        width = measure()
        if (width > 0) host.requestUpdate()
      }
    },
    hostDisconnected() {
      window.removeEventListener('beforeprint', before)
      window.removeEventListener('afterprint', after)
      observer.disconnect()
      watched = null
    },
  })
  return () => (onPaper ? Math.min(width, PAPER_WIDTH) : width)
}
