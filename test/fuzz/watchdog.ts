import { Worker } from 'node:worker_threads'

/** CPU seconds after which a case is taken to hang, and seconds on the wall after which it is taken to wait for nothing. */
const PATIENCE = { cpu: 20, wall: 600 }

const code = `
const { workerData: { shared, patience } } = require('node:worker_threads')
const begun = new Float64Array(shared, 0, 2)
const name = new Uint8Array(shared, 16)
let of = 0
let used = 0
setInterval(() => {
  const { user, system } = process.cpuUsage()
  const now = (user + system) / 1e6
  if (begun[0] !== of) {
    of = begun[0]
    used = now
    return
  }
  const waited = Date.now() - of > patience.wall * 1000
  if (of === 0 || (now - used < patience.cpu && !waited)) return
  const door = new TextDecoder().decode(name.slice(0, name.indexOf(0)))
  const said = waited ? 'WAITS for ever' : 'HANGS'
  require('node:fs').writeSync(2, said + ' at ' + door + ', seed ' + begun[1] + '; again with --show to see it\\n')
  process.kill(process.pid, 'SIGKILL')
}, 1000)
`

export type Watch = { begin(door: string, seed: number): void; end(): void }

/** Watches from another thread, since a loop without end lets nothing else of its own thread speak. */
export function watch(): Watch {
  const shared = new SharedArrayBuffer(16 + 64)
  const begun = new Float64Array(shared, 0, 2)
  const name = new Uint8Array(shared, 16)
  const worker = new Worker(code, { eval: true, workerData: { shared, patience: PATIENCE } })
  worker.unref()
  return {
    begin(door, seed) {
      name.fill(0)
      name.set(new TextEncoder().encode(door).slice(0, 63))
      begun[1] = seed
      begun[0] = Date.now()
    },
    end() {
      begun[0] = 0
    },
  }
}
