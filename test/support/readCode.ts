/**
 * Reads a matrix code without faults (ISO/IEC 18004, byte mode), for the levels and sizes tests need: an own reading
 * of the standard, from memory, so that the maker of codes does not check itself.
 */
export function readCode(grid: readonly (readonly boolean[])[]): string {
  const size = grid.length
  const version = (size - 17) / 4
  const dark = (x: number, y: number) => grid[y]?.[x] ?? false
  // Format: five bits beside the finder, masked by 101010000010010; the first two are the level.
  const written = [0, 1, 2, 3, 4]
    .map(x => (dark(x, 8) ? 1 : 0))
    .reduce<number>((sum, bit) => 2 * sum + bit, 0)
  const format = written ^ 0b10101
  const level = ['M', 'L', 'H', 'Q'][format >> 3] as Level
  const mask = MASKS[format & 7]!
  const bits: number[] = []
  let upward = true
  for (let right = size - 1; right > 0; right -= 2) {
    if (right === 6) right = 5
    for (let step = 0; step < size; step++) {
      const y = upward ? size - 1 - step : step
      for (const x of [right, right - 1])
        if (!isFunction(x, y, { size, version })) bits.push(Number(dark(x, y) !== mask(x, y)))
    }
    upward = !upward
  }
  const words = Array.from({ length: Math.floor(bits.length / 8) }, (_, at) =>
    bits.slice(8 * at, 8 * at + 8).reduce((sum, bit) => 2 * sum + bit, 0),
  )
  return textOf(unwoven(words, { version, level }), version)
}

type Level = 'L' | 'M' | 'Q' | 'H'

const MASKS: readonly ((x: number, y: number) => boolean)[] = [
  (x, y) => (x + y) % 2 === 0,
  (_, y) => y % 2 === 0,
  x => x % 3 === 0,
  (x, y) => (x + y) % 3 === 0,
  (x, y) => (Math.floor(y / 2) + Math.floor(x / 3)) % 2 === 0,
  (x, y) => ((x * y) % 2) + ((x * y) % 3) === 0,
  (x, y) => (((x * y) % 2) + ((x * y) % 3)) % 2 === 0,
  (x, y) => (((x + y) % 2) + ((x * y) % 3)) % 2 === 0,
]

function alignmentAt(version: number, size: number): readonly number[] {
  if (version === 1) return []
  const count = Math.floor(version / 7) + 2
  const step = version === 32 ? 26 : Math.ceil((version * 4 + 4) / (count * 2 - 2)) * 2
  return [6, ...Array.from({ length: count - 1 }, (_, at) => size - 7 - at * step).reverse()]
}

function isFunction(x: number, y: number, { size, version }: { size: number; version: number }): boolean {
  const end = size - 9
  if ((x <= 8 && y <= 8) || (x > end && y <= 8) || (x <= 8 && y > end)) return true
  if (x === 6 || y === 6) return true
  if (version >= 7 && ((x >= size - 11 && y <= 5) || (y >= size - 11 && x <= 5))) return true
  const centres = alignmentAt(version, size)
  const last = centres.at(-1)
  return centres.some(cx =>
    centres.some(cy => {
      const onFinder = (cx === 6 && cy === 6) || (cx === 6 && cy === last) || (cx === last && cy === 6)
      return !onFinder && Math.abs(x - cx) <= 2 && Math.abs(y - cy) <= 2
    }),
  )
}

/** Blocks and correction words in each, level by level, of the versions that the tests come across (from memory). */
const BLOCKS: Readonly<Record<string, readonly [blocks: number, correction: number]>> = {
  '3L': [1, 15],
  '4L': [1, 20],
  '3M': [1, 26],
  '4M': [2, 18],
  '6L': [2, 18],
  '6M': [4, 16],
  '7L': [2, 20],
  '7M': [4, 18],
  '14L': [4, 30],
  '14M': [9, 24],
  '15L': [6, 22],
  '16L': [6, 24],
  '22L': [9, 28],
  '23L': [9, 30],
  '22M': [17, 28],
  '23M': [18, 28],
}

function unwoven(words: readonly number[], { version, level }: { version: number; level: Level }): number[] {
  const known = BLOCKS[`${version}${level}`]
  if (!known) throw new Error(`no blocks are written down for version ${version}, level ${level}`)
  const [count, correction] = known
  const data = words.length - count * correction
  const short = Math.floor(data / count)
  const longer = data % count
  const blocks = Array.from({ length: count }, (): number[] => [])
  let at = 0
  for (let word = 0; word <= short; word++)
    for (let block = 0; block < count; block++)
      if (word < short || block >= count - longer) blocks[block]?.push(words[at++] ?? 0)
  return blocks.flat()
}

function textOf(words: readonly number[], version: number): string {
  const bits = words.flatMap(word => Array.from({ length: 8 }, (_, at) => (word >> (7 - at)) & 1))
  let at = 0
  const take = (count: number) => {
    const value = bits.slice(at, at + count).reduce((sum, bit) => 2 * sum + bit, 0)
    at += count
    return value
  }
  const mode = take(4)
  if (mode !== 0b0100) throw new Error(`expected byte mode, received ${mode}`)
  const length = take(version < 10 ? 8 : 16)
  return new TextDecoder().decode(Uint8Array.from({ length }, () => take(8)))
}
