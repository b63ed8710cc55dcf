import { spawn, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { createInterface } from 'node:readline'
import type { Contestant } from './measure.ts'

/** A program of another tongue that stays up, does what a line asks, and tells what it took: "seconds pieces value". */
export type Peer = { readonly asks: (command: string) => Contestant; readonly stop: () => void }

function startPeer(program: string, words: readonly string[]): Peer {
  const child = spawn(program, words, { stdio: ['pipe', 'pipe', 'inherit'] })
  const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]()
  return {
    asks: command => async () => {
      child.stdin.write(`${command}\n`)
      const { value: line, done } = await lines.next()
      const [seconds = Number.NaN, pieces = Number.NaN, value = Number.NaN] = String(line)
        .split(' ')
        .map(Number)
      if (done || !Number.isFinite(seconds))
        throw new Error(`${program} ${words.join(' ')}: ${command}: ${line}`)
      return { seconds, pieces, value }
    },
    stop: () => child.stdin.end(),
  }
}

const here = (name: string) => resolve('test/bench', name)
const isThere = (program: string, words: readonly string[]) => spawnSync(program, words).status === 0

/** Compiled on the spot; undefined without a compiler. */
function compiled(name: string): Peer | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'swardsink-'))
  process.on('exit', () => rmSync(folder, { recursive: true, force: true }))
  const program = join(folder, name)
  const made = ['cc', 'gcc', 'clang'].some(compiler =>
    isThere(compiler, ['-O2', '-o', program, here(`${name}.c`), '-lm']),
  )
  return made ? startPeer(program, []) : undefined
}

const scipy = (): Peer | undefined =>
  isThere('python3', ['-c', 'import numpy, scipy.optimize'])
    ? startPeer('python3', [here('peer.py')])
    : undefined

export type Peers = {
  readonly kernels: Peer | undefined
  readonly patch: Peer | undefined
  readonly scipy: Peer | undefined
  /** Those that are left out, with the reason. */
  readonly skipped: readonly string[]
  readonly stop: () => void
}

export function startPeers(): Peers {
  const [kernels, patch, python] = [compiled('kernels'), compiled('patch'), scipy()]
  return {
    kernels,
    patch,
    scipy: python,
    skipped: [
      ...(kernels ? [] : ['C is skipped: no compiler here (cc, gcc or clang)']),
      ...(python ? [] : ['scipy is skipped: no python3 with scipy here']),
    ],
    stop: () => {
      for (const peer of [kernels, patch, python]) peer?.stop()
    },
  }
}

/** A contestant by its side, or nothing where the peer is not there. */
export const peerSide = <S extends 'C' | 'scipy'>(
  side: S,
  peer: Peer | undefined,
  command: string,
): Partial<Record<S, Contestant>> =>
  (peer ? { [side]: peer.asks(command) } : {}) as Partial<Record<S, Contestant>>
