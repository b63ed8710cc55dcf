// node runScript.js script.ts [arguments]: runs a TypeScript script that drives something, such as a browser.
// For what is timed use bundleAndRun.js: going through a module runner makes tight loops slower.
import { resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { runnerImport } from 'vite'

const [script, ...words] = process.argv.slice(2)
if (!script) throw new Error('which script?')
process.argv = [process.argv0, resolve(script), ...words]

await runnerImport(resolve(script), {
  // By name: this runner leaves every package to Node, which knows nothing of the model's source.
  resolve: {
    alias: {
      '@swardsink/model': fileURLToPath(new URL('../../packages/model/src/index.ts', import.meta.url)),
    },
  },
})
