/** Every way a search can end: whether that is an answer, and the sentence that says so. */
export const endings = {
  'nothing left': {
    outcome: 'converged',
    sentence: 'converged: nothing is left of the residuals',
  },
  'small step': {
    outcome: 'converged',
    sentence: 'converged: the next step would move no parameter by a noticeable part of itself',
  },
  'small gain': {
    outcome: 'converged',
    sentence: 'converged: the next step would move the parameters by a small part of their standard errors',
  },
  rounding: {
    outcome: 'converged',
    sentence: 'converged as closely as the rounding of the model allows',
  },
  'nothing free': {
    outcome: 'converged',
    sentence: 'converged: every free parameter lies at its bound',
  },
  'no lower': {
    outcome: 'stopped',
    sentence: 'stopped: no smaller sum of squares could be found, though the slopes promise one',
  },
  creeping: {
    outcome: 'stopped',
    sentence:
      'stopped: the sum of squares falls by next to nothing from step to step, as on a plateau or where a parameter runs off without end',
  },
  undetermined: {
    outcome: 'stopped',
    sentence:
      'stopped: the residuals do not determine every parameter; some combination of them changes nothing',
  },
  'running away': {
    outcome: 'stopped',
    sentence: 'stopped: the sum of squares keeps falling as a parameter runs off without end',
  },
  'half exact': {
    outcome: 'stopped',
    sentence:
      'stopped: more than half of the residuals are zero, so that there is no scatter to measure the others by',
  },
  'too many iterations': {
    outcome: 'stopped',
    sentence: 'stopped: the iterations allowed are used up',
  },
  'no slopes': {
    outcome: 'stopped',
    sentence: 'stopped: the model has no slopes here',
  },
  'no answer at the start': {
    outcome: 'failed',
    sentence: 'failed: the model has no answer at the start, nor at the others that were tried',
  },
} as const satisfies Record<string, { outcome: 'converged' | 'stopped' | 'failed'; sentence: string }>

/** Short names of the ways a search can end. */
export type Ending = keyof typeof endings
