// Builds the page if its sources have moved on, serves it, and says where.
import { fileURLToPath } from 'node:url'
import { preview } from 'vite'
import { buildStale } from './build.js'

const usualPort = 4820

const port = wantedPort()

// Started by a test, it ends with the test, even while it is still building.
process.once('disconnect', () => process.exit(0))
if (process.connected === false) process.exit(0)

try {
  await buildStale('page')
} catch (error) {
  console.error(error instanceof Error ? error.message : error)
  process.exit(1)
}

const server = await preview({
  root: fileURLToPath(new URL('..', import.meta.url)),
  logLevel: 'warn',
  // This machine only; the next free port when the usual one is taken.
  preview: { host: '127.0.0.1', port, strictPort: false },
})
const address = server.httpServer.address()
const open = typeof address === 'object' && address ? address.port : port
console.log(`Swardsink is open at http://localhost:${open}/`)
console.log('Stop it with Ctrl+C.')

let stopping = false
function stop() {
  if (stopping) return
  stopping = true
  // Browsers keep connections open; waiting for them to close would keep the server.
  if ('closeAllConnections' in server.httpServer) server.httpServer.closeAllConnections()
  server.close().finally(() => process.exit(0))
}

for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP'])) process.on(signal, stop)
// Started by a package script, it ends with the script: the shell between them passes no signal on.
if (process.env.npm_lifecycle_event) {
  const parent = process.ppid
  const pause_ms = 250
  setInterval(() => process.ppid === parent || stop(), pause_ms).unref()
}

function wantedPort() {
  const words = process.argv.slice(2)
  if (words.length === 0) return usualPort
  const [name, value, ...more] = words
  const port = Number(value)
  if (name === '--port' && value && more.length === 0 && Number.isInteger(port) && port >= 0 && port < 65536)
    return port
  console.error(`expected nothing or --port and a whole number from 0 to 65535, received ${words.join(' ')}`)
  return process.exit(2)
}
