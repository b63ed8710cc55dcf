/** One thing wrong with data from outside: where, what was expected, what stood there. */
export type Problem = {
  readonly path: string
  readonly expected: string
  readonly received: string
}

/** A caller's mistake: a value outside what the function is defined for. */
export class InputError extends Error {
  readonly quantity: string
  readonly expected: string
  readonly received: string

  constructor({ path, expected, received }: Problem) {
    super(`${path}: expected ${expected}, received ${received}`)
    this.name = 'InputError'
    this.quantity = path
    this.expected = expected
    this.received = received
  }
}
