/** A list longer than this is known by itself, not by what it holds: writing 5,000 readings out costs frames. */
const LONG = 64

const known = new WeakMap<object, number>()
let last = 0

function nameOf(list: object): string {
  let number = known.get(list)
  if (number === undefined) {
    number = ++last
    known.set(list, number)
  }
  return `list ${number}`
}

/**
 * A text that is equal for equal inputs. Long lists are told apart by identity: the same list is never worked out
 * twice, an equal copy may be, and two different ones never share an answer.
 */
export const keyOf = (input: unknown): string =>
  JSON.stringify(input, (_, value: unknown) =>
    (Array.isArray(value) || ArrayBuffer.isView(value)) && lengthOf(value) > LONG ? nameOf(value) : value,
  ) ?? 'nothing'

const lengthOf = (list: object): number =>
  'length' in list && typeof list.length === 'number' ? list.length : 0
