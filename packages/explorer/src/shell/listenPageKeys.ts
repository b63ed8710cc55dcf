export type PageKeys = {
  readonly turn: (by: 1 | -1) => void
  readonly leave: () => void
}

/** What takes arrow keys for itself. */
const CONTROL =
  'input, select, textarea, button, a[href], summary, audio, video, [contenteditable], [role]:not(h1, [role="region"])'

/**
 * Page keys, as a clicker sends them, always turn, whatever has the focus; arrow keys only when no control has it;
 * Escape leaves.
 */
export function listenPageKeys(window: Window, keys: PageKeys): () => void {
  function pressed(event: KeyboardEvent): void {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return
    const [target] = event.composedPath()
    const by = turnOf(event.key, target ?? null)
    if (by !== null) keys.turn(by)
    else if (event.key === 'Escape') keys.leave()
    else return
    event.preventDefault()
    event.stopPropagation()
  }
  // Before any control hears it: on a slider Page Down would set a value.
  window.addEventListener('keydown', pressed, { capture: true })
  return () => window.removeEventListener('keydown', pressed, { capture: true })
}

function turnOf(key: string, target: EventTarget | null): 1 | -1 | null {
  if (key === 'PageDown') return 1
  if (key === 'PageUp') return -1
  if (key !== 'ArrowRight' && key !== 'ArrowLeft') return null
  // By its methods: an element of another window is none of this one's classes.
  const isControl = target !== null && 'matches' in target && (target as Element).matches(CONTROL)
  if (isControl) return null
  return key === 'ArrowRight' ? 1 : -1
}
