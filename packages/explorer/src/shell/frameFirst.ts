import type { Refiner } from '../flow/index.ts'

type Job = Parameters<Refiner['refine']>[0]

/** Long enough for the frame that shows what was just done, and for a key that is held to come again. */
const AFTER = 40

/**
 * The worker's work begins after the frame that shows the draft: handing it over costs time of this thread. Of
 * several questions from one entry meanwhile only the newest is asked.
 */
export function frameFirst(refiner: Refiner): Refiner {
  const due = new Map<string, Job>()
  let isSet = false
  function ask(): void {
    isSet = false
    const jobs = [...due.values()]
    due.clear()
    for (const job of jobs) refiner.refine(job)
  }
  return {
    refine(job) {
      due.set(job.id, job)
      if (!isSet) setTimeout(ask, AFTER)
      isSet = true
    },
    drop(id) {
      due.delete(id)
      refiner.drop(id)
    },
  }
}

/** Several calls before the next frame are one. */
export function oncePerFrame(call: () => void): () => void {
  let isDue = false
  return () => {
    if (isDue) return
    isDue = true
    requestAnimationFrame(() => {
      isDue = false
      call()
    })
  }
}
