import { createHash } from 'node:crypto'
import type { Plugin, Rolldown } from 'vite'
import { type ContentPolicy, policyText } from './contentPolicy.ts'

/** The one way a worker is started in this house: so that the one file can start it in the other way. */
const startsWorker =
  /new Worker\(\s*new URL\(\s*(['"])(\.[^'"]+)\1,\s*import\.meta\.url\s*\),\s*\{\s*type: 'module',?\s*\}\s*\)/

const ENTRY = 'virtual:swardsink/entry'
const CARRIED = 'virtual:swardsink/carried'
const virtual = [ENTRY, CARRIED]

/** First of all, while the one script is still the current one: what a worker is started from later. */
const carried = `
const script = typeof document === 'undefined' ? '' : document.currentScript.textContent
let address
export const startCarried = () =>
  new Worker((address ??= URL.createObjectURL(new Blob([script], { type: 'text/javascript' }))))
`

const entryOf = (page: string, worker: string): string => `
import '${CARRIED}'
if (typeof document === 'undefined') import('${worker}')
else import('${page}')
`

/**
 * A page opened from disk may load no module, so its worker runs the page's own script, carried once: a script with a
 * document is the page, one without is the worker.
 */
export function carriedWorkers(q: { readonly page: string; readonly worker: string }): Plugin {
  return {
    name: 'swardsink-carried-workers',
    enforce: 'pre',
    resolveId: id => (virtual.includes(id) ? `\0${id}` : null),
    load(id) {
      if (id === `\0${ENTRY}`) return entryOf(q.page, q.worker)
      return id === `\0${CARRIED}` ? carried : null
    },
    transformIndexHtml: {
      order: 'pre',
      handler: html => html.replace(/src="[^"]*\/main\.ts"/, `src="${ENTRY}"`),
    },
    transform(code) {
      if (!startsWorker.test(code)) return null
      return {
        code: `import { startCarried } from '${CARRIED}'\n${code.replace(startsWorker, () => 'startCarried()')}`,
        map: null,
      }
    },
  }
}

const hashOf = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`

/** What the page from disk may do: run the script and the style inside it, by their hashes, and its own worker. */
const carriedPolicy = (script: string, style: string): ContentPolicy => ({
  'default-src': ["'none'"],
  'script-src': [hashOf(script)],
  'worker-src': ['blob:'],
  'style-src': [style ? hashOf(style) : "'none'"],
  'img-src': ['data:', 'blob:'],
  'base-uri': ["'none'"],
  'form-action': ["'none'"],
})

/** Folds a built page, its script and its styles into one file of the given name. */
export function oneFile(name: string): Plugin {
  return {
    name: 'swardsink-one-file',
    enforce: 'post',
    generateBundle(_options, bundle) {
      const files = Object.values(bundle)
      const page = files.find(file => file.fileName.endsWith('.html'))
      const scripts = files.filter(file => file.type === 'chunk')
      const styles = files.filter(file => file.fileName.endsWith('.css'))
      const rest = files.filter(
        file => file !== page && !scripts.includes(file as never) && !styles.includes(file),
      )
      const [script] = scripts
      if (page?.type !== 'asset' || !script || scripts.length > 1)
        throw new Error('expected one page with one script')
      if (rest.length > 0)
        throw new Error(`nothing may stay outside: ${rest.map(file => file.fileName).join(', ')}`)

      const code = withoutEndTags(script.code)
      const style = styles.map(textOf).join('\n')
      for (const file of files) delete bundle[file.fileName]
      this.emitFile({ type: 'asset', fileName: name, source: fold({ page: textOf(page), code, style }) })
    },
  }
}

const textOf = (file: Rolldown.OutputAsset | Rolldown.OutputChunk): string =>
  file.type === 'chunk'
    ? file.code
    : typeof file.source === 'string'
      ? file.source
      : new TextDecoder().decode(file.source)

/** Inside a script element these two sequences would end or hide the script; in JavaScript they mean the same escaped. */
const withoutEndTags = (code: string) => code.replace(/<(?=\/script|!--)/gi, '\\x3C')

function fold({ page, code, style }: { page: string; code: string; style: string }): string {
  const policy = `<meta http-equiv="Content-Security-Policy" content="${policyText(carriedPolicy(code, style))}">`
  const bare = page
    .replace(/\s*<script type="module"[^>]*><\/script>/g, '')
    .replace(/\s*<link [^>]*rel="(?:stylesheet|modulepreload|manifest)"[^>]*>/g, '')
  // By functions, because a replacement text gives a meaning to every $ in it.
  return bare
    .replace('<head>', head => `${head}\n    ${policy}${style && `\n    <style>${style}</style>`}`)
    .replace('</body>', end => `<script>${code}</script>\n  ${end}`)
}
