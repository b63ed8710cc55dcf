import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Plugin } from 'vite'

type Kept = readonly [path: string, integrity: string]

const integrityOf = (content: Uint8Array): string =>
  `sha256-${createHash('sha256').update(content).digest('base64')}`

function filesBelow(folder: string, within = ''): readonly string[] {
  return readdirSync(join(folder, within), { withFileTypes: true }).flatMap(entry =>
    entry.isDirectory() ? filesBelow(folder, `${within}${entry.name}/`) : [`${within}${entry.name}`],
  )
}

/** The page is kept under the address of its folder, whatever its file is called. */
const PAGE = 'index.html'
const WORKER = 'service-worker.js'

/**
 * Writes the service worker that keeps the built page for use without a network: every file by its name and the
 * hash of what is in it, so that a page whose files were replaced halfway is never kept. Also what installs it.
 */
export function offline(worker: URL): Plugin {
  return {
    name: 'swardsink-offline',
    apply: 'build',
    enforce: 'post',
    transformIndexHtml: {
      order: 'post',
      handler: html => ({
        html: html.replace(/\s*<link rel="icon"[^>]*>/, ''),
        tags: [
          { tag: 'link', attrs: { rel: 'icon', href: './icon.svg' }, injectTo: 'head' },
          { tag: 'link', attrs: { rel: 'manifest', href: './manifest.webmanifest' }, injectTo: 'head' },
        ],
      }),
    },
    // When all is written: what stands in the files is what a browser will be given.
    async writeBundle({ dir }) {
      if (!dir) throw new Error('expected a folder to build into')
      const files: readonly Kept[] = filesBelow(dir)
        .filter(path => !path.endsWith('.map') && path !== WORKER)
        .sort()
        .map(path => [path === PAGE ? './' : `./${path}`, integrityOf(readFileSync(join(dir, path)))])
      if (!files.some(([path]) => path === './')) throw new Error('the page is not in what was built')
      const version = createHash('sha256').update(JSON.stringify(files)).digest('hex').slice(0, 16)
      const source = readFileSync(worker, 'utf8')
        .replace('__FILES__', () => JSON.stringify(files))
        .replace('__VERSION__', version)
      await writeFile(join(dir, WORKER), source)
    },
  }
}
