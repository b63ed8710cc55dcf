// node bundleAndRun.js script.ts [arguments]: bundles a script with the model's source, as a page would carry it,
// and runs the bundle in a process of its own.
import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { basename, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build, defaultServerConditions } from 'vite'

const [script, ...words] = process.argv.slice(2)
if (!script) throw new Error('which script?')

// Below node_modules, so that the bundle finds the packages it leaves outside.
const cache = fileURLToPath(new URL('../../node_modules/.cache/swardsink/', import.meta.url))
mkdirSync(cache, { recursive: true })
const folder = mkdtempSync(join(cache, 'bundled-'))
const name = basename(script, '.ts')
try {
  await build({
    configFile: false,
    logLevel: 'warn',
    ssr: {
      noExternal: [/^@swardsink\//],
      resolve: { conditions: ['@swardsink/source', ...defaultServerConditions] },
    },
    build: {
      ssr: resolve(script),
      outDir: folder,
      emptyOutDir: false,
      target: 'node20',
      minify: false,
      rolldownOptions: { output: { entryFileNames: `${name}.mjs` } },
    },
  })
  const run = spawnSync(process.execPath, [...process.execArgv, join(folder, `${name}.mjs`), ...words], {
    stdio: 'inherit',
  })
  process.exitCode = run.status ?? 1
} finally {
  rmSync(folder, { recursive: true, force: true })
}
