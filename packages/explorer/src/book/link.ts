import { type Problem, readScenario, type Scenario, writeScenario } from '@swardsink/model'
import { readAddress } from './address.ts'

/** Before values that are packed tight; a link without it holds them as they are. */
const TIGHT = '~'
/** A few bytes can be made to unpack to gigabytes: no scenario is longer than this. */
const MOST_BYTES = 2e6

function lettersOf(bytes: Uint8Array): string {
  const binary = Array.from(bytes, byte => String.fromCharCode(byte)).join('')
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')
}

function bytesOf(letters: string): Uint8Array<ArrayBuffer> {
  const binary = atob(letters.replaceAll('-', '+').replaceAll('_', '/'))
  return Uint8Array.from(binary, character => character.charCodeAt(0))
}

async function through(
  bytes: Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream,
): Promise<Uint8Array> {
  const reader = new Blob([bytes]).stream().pipeThrough(stream).getReader()
  const chunks: Uint8Array[] = []
  let length = 0
  for (;;) {
    const { done, value } = await reader.read()
    if (done) break
    length += value.length
    if (length > MOST_BYTES) throw new RangeError('too long for a scenario')
    chunks.push(value)
  }
  const whole = new Uint8Array(length)
  let at = 0
  for (const chunk of chunks) {
    whole.set(chunk, at)
    at += chunk.length
  }
  return whole
}

/** These values in the letters an address may carry. */
export async function packScenario(scenario: Scenario): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify(writeScenario(scenario, { units: 'SI' })))
  return `${TIGHT}${lettersOf(await through(bytes, new CompressionStream('deflate-raw')))}`
}

async function unpack(packed: string): Promise<unknown> {
  const tight = packed.startsWith(TIGHT)
  const bytes = bytesOf(tight ? packed.slice(TIGHT.length) : packed)
  const text = tight ? await through(bytes, new DecompressionStream('deflate-raw')) : bytes
  return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(text))
}

/** The part of an address after and with #, that carries these values. */
export async function scenarioLink(scenario: Scenario): Promise<string> {
  return `#scenario=${await packScenario(scenario)}`
}

export type ReadLink =
  | { readonly kind: 'none' }
  | { readonly kind: 'scenario'; readonly scenario: Scenario }
  | { readonly kind: 'damaged'; readonly problems: readonly Problem[] }

/** The scenario an address carries after #, none, or what is wrong with it. */
export async function readLink(hash: string): Promise<ReadLink> {
  const packed = readAddress(hash).scenario
  if (packed === null) return { kind: 'none' }
  let raw: unknown
  try {
    raw = await unpack(packed)
  } catch {
    const problem = { path: 'link', expected: 'a whole link', received: 'a part of one, or a changed one' }
    return { kind: 'damaged', problems: [problem] }
  }
  const read = await readScenario(raw)
  return read.ok
    ? { kind: 'scenario', scenario: read.scenario }
    : { kind: 'damaged', problems: read.problems }
}
