import type { ReactiveControllerHost } from 'lit'

/** How far beyond the window an entry counts as near, in heights of the window: a turn of a wheel must find it drawn. */
const MARGIN = '150%'

/**
 * Follows which of a host's elements are in view or near it, by what `nameOf` calls them. What is far is neither
 * worked out nor drawn.
 */
export function watchNear(
  host: ReactiveControllerHost & { readonly renderRoot: DocumentFragment | HTMLElement },
  q: {
    readonly selector: string
    readonly nameOf: (element: Element) => string
    readonly onChange: (near: ReadonlySet<string>) => void
  },
): void {
  const watched = new Map<Element, boolean>()
  let observer: IntersectionObserver | null = null

  function heard(entries: readonly IntersectionObserverEntry[]): void {
    for (const { target, isIntersecting } of entries)
      if (watched.has(target)) watched.set(target, isIntersecting)
    q.onChange(new Set([...watched].flatMap(([element, near]) => (near ? [q.nameOf(element)] : []))))
  }

  function look(): void {
    if (!observer) return
    const present = new Set(host.renderRoot.querySelectorAll(q.selector))
    for (const element of watched.keys()) {
      if (present.has(element)) continue
      observer.unobserve(element)
      watched.delete(element)
    }
    for (const element of present) {
      if (watched.has(element)) continue
      watched.set(element, false)
      observer.observe(element)
    }
  }

  host.addController({
    hostConnected() {
      observer = new IntersectionObserver(heard, { rootMargin: `${MARGIN} 0px` })
      watched.clear()
    },
    hostUpdated: look,
    hostDisconnected() {
      observer?.disconnect()
      observer = null
      watched.clear()
    },
  })
}
