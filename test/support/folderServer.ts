import { readFile } from 'node:fs/promises'
import { createServer } from 'node:http'
import { extname, join, normalize } from 'node:path'

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
}

export type FolderServer = {
  readonly address: string
  /** What goes out in place of what is in the folder, by path. */
  readonly instead: Map<string, (text: string) => string>
  close(): Promise<void>
}

/** A plain server of files: a folder under a path of its own, as a school or a club would put it on its site. */
export async function serveFolder(folder: string, under: string): Promise<FolderServer> {
  const instead = new Map<string, (text: string) => string>()
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost')
    const asked = pathname.startsWith(under) ? normalize(pathname.slice(under.length) || 'index.html') : ''
    try {
      if (asked === '' || asked.startsWith('..')) throw new Error('not here')
      const content = await readFile(join(folder, asked))
      const changed = instead.get(asked)
      response.setHeader('content-type', types[extname(asked)] ?? 'application/octet-stream')
      response.end(changed ? changed(content.toString()) : content)
    } catch {
      response.statusCode = 404
      response.end()
    }
  })
  await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve))
  const at = server.address()
  if (at === null || typeof at === 'string') throw new Error('no port')
  return {
    address: `http://127.0.0.1:${at.port}${under}`,
    instead,
    close: () =>
      new Promise(resolve => {
        server.closeAllConnections()
        server.close(() => resolve())
      }),
  }
}
