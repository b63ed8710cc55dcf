/** Undo and redo by their usual keys. In a text field in which something was just typed the browser's own come first. */
export function listenUndoKeys(q: { readonly undo: () => void; readonly redo: () => void }): () => void {
  /** The field in which the reader has typed since it got the focus. */
  let typedIn: EventTarget | null = null

  function focused(): void {
    typedIn = null
  }
  function typed(event: Event): void {
    const [target] = event.composedPath()
    if (target && isText(target)) typedIn = target
  }
  function pressed(event: KeyboardEvent): void {
    const wanted = wantedBy(event)
    if (!wanted || event.defaultPrevented) return
    if (typedIn !== null && event.composedPath()[0] === typedIn) return
    event.preventDefault()
    q[wanted]()
  }

  document.addEventListener('focusin', focused)
  document.addEventListener('input', typed)
  document.addEventListener('keydown', pressed)
  return () => {
    document.removeEventListener('focusin', focused)
    document.removeEventListener('input', typed)
    document.removeEventListener('keydown', pressed)
  }
}

function wantedBy({ key, ctrlKey, metaKey, altKey, shiftKey }: KeyboardEvent): 'undo' | 'redo' | null {
  if (!(ctrlKey || metaKey) || altKey) return null
  const letter = key.toLowerCase()
  if (letter === 'z') return shiftKey ? 'redo' : 'undo'
  return letter === 'y' && !shiftKey ? 'redo' : null
}

const NOT_TEXT = ['range', 'checkbox', 'radio', 'file', 'button']

function isText(target: EventTarget): boolean {
  return (
    target instanceof HTMLTextAreaElement ||
    (target instanceof HTMLInputElement && !NOT_TEXT.includes(target.type))
  )
}
