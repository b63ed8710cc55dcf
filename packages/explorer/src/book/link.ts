import { type Problem, readScenario, type Scenario, writeScenario } from '@swardsink/model'

const KEY = 'scenario='

/** Text as base64 in the letters an address may carry. */
function pack(text: string): string {
  const bytes = new TextEncoder().encode(text)
  const binary = Array.from(bytes, byte => String.fromCharCode(byte)).join('')
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')
}

function unpack(packed: string): string {
  const binary = atob(packed.replaceAll('-', '+').replaceAll('_', '/'))
  return new TextDecoder('utf-8', { fatal: true }).decode(Uint8Array.from(binary, c => c.charCodeAt(0)))
}

/** The part of an address after and with #, that carries these values. */
export function scenarioLink(scenario: Scenario): string {
  return `#${KEY}${pack(JSON.stringify(writeScenario(scenario, { units: 'SI' })))}`
}

export type ReadLink =
  | { readonly kind: 'none' }
  | { readonly kind: 'scenario'; readonly scenario: Scenario }
  | { readonly kind: 'damaged'; readonly problems: readonly Problem[] }

/** The scenario an address carries after #, none, or what is wrong with it. */
export async function readLink(hash: string): Promise<ReadLink> {
  const start = hash.indexOf(KEY)
  if (start < 0) return { kind: 'none' }
  let raw: unknown
  try {
    raw = JSON.parse(unpack(hash.slice(start + KEY.length)))
  } catch {
    const problem = { path: 'link', expected: 'a whole link', received: 'a part of one, or a changed one' }
    return { kind: 'damaged', problems: [problem] }
  }
  const read = await readScenario(raw)
  return read.ok
    ? { kind: 'scenario', scenario: read.scenario }
    : { kind: 'damaged', problems: read.problems }
}
