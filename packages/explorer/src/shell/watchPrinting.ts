import type { ReactiveControllerHost } from 'lit'

/**
 * Draws an element for paper while it is printed, whatever the width of the screen. Printing waits for no turn of
 * the event loop: `draw` has to be done when it returns.
 */
export function watchPrinting(host: ReactiveControllerHost, draw: () => void): () => boolean {
  let printing = false
  const papers = matchMedia('print')
  const set = (next: boolean): void => {
    if (printing === next) return
    printing = next
    draw()
  }
  const heard = (): void => set(papers.matches)
  const before = (): void => set(true)
  const after = (): void => set(papers.matches)
  host.addController({
    hostConnected() {
      papers.addEventListener('change', heard)
      window.addEventListener('beforeprint', before)
      window.addEventListener('afterprint', after)
    },
    hostDisconnected() {
      papers.removeEventListener('change', heard)
      window.removeEventListener('beforeprint', before)
      window.removeEventListener('afterprint', after)
    },
  })
  return () => printing
}
