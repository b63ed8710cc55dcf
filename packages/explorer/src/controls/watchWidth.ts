import type { ReactiveControllerHost } from 'lit'

/**
 * The width an element has for a figure, px, followed as it changes. Figures are laid out for their width, never
 * scaled to it.
 */
export function watchWidth(host: ReactiveControllerHost & Element, selector?: string): () => number {
  let width = 0
  let watched: Element | null = null
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
  host.addController({
    hostConnected: watch,
    hostUpdated() {
      watch()
      // The first drawing has no width yet: it is measured and drawn before the browser paints.
      if (watched && width === 0) {
        width = measure()
        if (width > 0) host.requestUpdate()
      }
    },
    hostDisconnected() {
      observer.disconnect()
      watched = null
    },
  })
  return () => width
}
