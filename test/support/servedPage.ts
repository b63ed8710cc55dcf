import { fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'

const start = fileURLToPath(new URL('../../packages/explorer/tools/start.js', import.meta.url))
const build = fileURLToPath(new URL('../../packages/explorer/tools/build.js', import.meta.url))

// Neither the test runner's own word for the environment, which would put the development form of libraries into
// the page, nor its arguments to Node.
const { NODE_ENV: _, ...environment } = process.env

export type ServedPage = { readonly address: string; close(): Promise<void> }

/** The page as a reader starts it, built first if it is stale, at a free port. */
export async function servePage(): Promise<ServedPage> {
  const server = fork(start, ['--port', '0'], { env: environment, execArgv: [], silent: true })
  const ended = new Promise<void>(resolve => server.once('exit', () => resolve()))
  return {
    address: await addressFrom(server),
    close: () => {
      server.kill()
      return ended
    },
  }
}

function addressFrom(server: ReturnType<typeof fork>): Promise<string> {
  let said = ''
  return new Promise((resolve, reject) => {
    const listen = (text: Buffer) => {
      said += text
      const address = /open at (http:\S+)/.exec(said)?.[1]
      if (address) resolve(address)
    }
    server.stdout?.on('data', listen)
    server.stderr?.on('data', listen)
    server.once('exit', code => reject(new Error(`the page could not be served (exit ${code}):\n${said}`)))
  })
}

/** Builds the page, the one file or the model's package if it is older than its sources. */
export function buildStale(what: 'page' | 'file' | 'model'): Promise<void> {
  const builder = fork(build, [what, '--stale'], { env: environment, execArgv: [], silent: true })
  let said = ''
  builder.stderr?.on('data', (text: Buffer) => {
    said += text
  })
  return new Promise((resolve, reject) => {
    builder.once('exit', code =>
      code === 0 ? resolve() : reject(new Error(`${what} could not be built:\n${said}`)),
    )
  })
}
