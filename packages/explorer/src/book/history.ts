/** What was, what is, what was undone. Plain data, so that it can be tested and kept. */
export type History<Value> = {
  readonly past: readonly Value[]
  readonly present: Value
  readonly future: readonly Value[]
  /** Changes in a row under the same gesture are one step back. */
  readonly gesture: string | null
}

/** Books share what did not change, so that a step costs little. */
const MOST_STEPS = 1000

export function startHistory<Value>(present: Value): History<Value> {
  return { past: [], present, future: [], gesture: null }
}

/** Records a change. Changes of one gesture (a slider being dragged) undo together. */
export function record<Value>(
  history: History<Value>,
  { present, gesture = null }: { readonly present: Value; readonly gesture?: string | null },
): History<Value> {
  const sameGesture = gesture !== null && gesture === history.gesture
  const past = sameGesture ? history.past : [...history.past, history.present].slice(-MOST_STEPS)
  return { past, present, future: [], gesture }
}

/** Ends a gesture: the next change starts a step of its own. */
export function endGesture<Value>(history: History<Value>): History<Value> {
  return history.gesture === null ? history : { ...history, gesture: null }
}

export function undo<Value>(history: History<Value>): History<Value> {
  const { past, present, future } = history
  const last = past.at(-1)
  if (last === undefined) return history
  return { past: past.slice(0, -1), present: last, future: [present, ...future], gesture: null }
}

export function redo<Value>(history: History<Value>): History<Value> {
  const { past, present, future } = history
  const [next, ...later] = future
  if (next === undefined) return history
  return { past: [...past, present], present: next, future: later, gesture: null }
}

export function canUndo<Value>(history: History<Value>): boolean {
  return history.past.length > 0
}

export function canRedo<Value>(history: History<Value>): boolean {
  return history.future.length > 0
}
