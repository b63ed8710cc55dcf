// What a reader has to fetch, against what we allow ourselves. Fails when something has grown past its budget.
import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import { minifySync } from 'vite'
import { buildStale } from './build.js'

const root = new URL('../../../', import.meta.url)
/** @param {string} path */
const read = path => readFileSync(new URL(path, root))
/** @param {string} path */
const zipped = path => gzipSync(read(path)).length

/** The script of the page and what it imports at once; not what it fetches later, nor the worker. */
function firstLoad() {
  const folder = 'packages/explorer/dist/'
  const page = read(`${folder}index.html`).toString()
  const files = new Set([...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map(([, file]) => file))
  for (const file of files) {
    const code = read(folder + file).toString()
    for (const [, next] of code.matchAll(/\b(?:import|from)\s*"\.\/([^"]+\.js)"/g))
      files.add(`assets/${next}`)
  }
  if (files.size === 0) throw new Error('the built page names no script')
  return [...files].reduce((sum, file) => sum + zipped(folder + file), 0)
}

/** The model as a page carries it, shortened: its entry and the parts that it shares with the command line. */
function modelEntry() {
  const folder = 'packages/model/dist/'
  const parts = readdirSync(fileURLToPath(new URL(folder, root)), { recursive: true })
    .map(String)
    .filter(name => name.endsWith('.js') && name !== 'command.js')
  const shortened = parts.map(name => minifySync(name, read(folder + name).toString(), { module: true }).code)
  return shortened.reduce((sum, code) => sum + gzipSync(code).length, 0)
}

// What stands today with a little room, so that growth is seen; what is aimed at: docs/decisions/0014.
const budgets = [
  { what: 'first load of the page, script', limit_kB: 100, zipped: true, size: firstLoad },
  { what: 'the model', limit_kB: 46, zipped: true, size: modelEntry },
  { what: 'the one file', limit_kB: 1500, zipped: false, size: () => read('dist/swardsink.html').length },
]

for (const name of /** @type {const} */ (['page', 'file', 'model'])) await buildStale(name)
for (const { what, limit_kB, zipped, size } of budgets) {
  const size_kB = size() / 1000
  const over = size_kB > limit_kB
  console.log(
    `${over ? 'TOO LARGE' : 'fits'}  ${what}: ${size_kB.toFixed(1)} of ${limit_kB} kB${zipped ? ', gzipped' : ''}`,
  )
  if (over) process.exitCode = 1
}
