// What a reader has to fetch, against what we allow ourselves. Fails when something has grown past its budget.
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import { build } from 'vite'
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

/**
 * What a page takes of the model that asks for one thing, or for everything: bundled, shortened, without what is fetched later.
 * @param {string} name
 */
async function taken(name) {
  const entry = 'taken.js'
  const built = await build({
    root: fileURLToPath(root),
    configFile: false,
    logLevel: 'silent',
    plugins: [
      {
        name: 'swardsink-taken',
        resolveId: id => (id.endsWith(entry) ? `\0${entry}` : null),
        load: id =>
          id === `\0${entry}`
            ? `export ${name} from ${JSON.stringify(fileURLToPath(new URL('packages/model/dist/index.js', root)))}`
            : null,
      },
    ],
    build: {
      write: false,
      target: 'es2022',
      minify: true,
      lib: { entry, formats: ['es'], fileName: 'taken' },
      rolldownOptions: { external: [/^mathjs/] },
    },
  })
  const [result] = Array.isArray(built) ? built : [built]
  if (!result || !('output' in result)) throw new Error('the bundler gave nothing')
  const chunks = result.output.flatMap(file => (file.type === 'chunk' ? [file] : []))
  const first = chunks.filter(({ isEntry }) => isEntry)
  const reached = new Set(first)
  for (const chunk of reached)
    for (const other of chunks) if (chunk.imports.includes(other.fileName)) reached.add(other)
  return [...reached].reduce((sum, { code }) => sum + gzipSync(code).length, 0)
}

// What stands today with a little room, so that growth is seen; what is aimed at: docs/decisions/0014.
const budgets = [
  { what: 'first load of the page, script', limit_kB: 132, zipped: true, size: firstLoad },
  {
    what: 'what pressing a roller takes of the model',
    limit_kB: 21,
    zipped: true,
    size: () => taken('{ press }'),
  },
  {
    what: 'what settling a unit takes of the model',
    limit_kB: 27,
    zipped: true,
    size: () => taken('{ settle }'),
  },
  { what: 'all of the model', limit_kB: 140, zipped: true, size: () => taken('*') },
  { what: 'the one file', limit_kB: 1500, zipped: false, size: () => read('dist/swardsink.html').length },
]

for (const name of /** @type {const} */ (['page', 'file', 'model'])) await buildStale(name)
for (const { what, limit_kB, zipped, size } of budgets) {
  const size_kB = (await size()) / 1000
  const over = size_kB > limit_kB
  console.log(
    `${over ? 'TOO LARGE' : 'fits'}  ${what}: ${size_kB.toFixed(1)} of ${limit_kB} kB${zipped ? ', gzipped' : ''}`,
  )
  if (over) process.exitCode = 1
}
