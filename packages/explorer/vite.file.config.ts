import { fileURLToPath } from 'node:url'
import { defaultClientConditions, defineConfig } from 'vite'
import { carriedWorkers, oneFile } from './tools/oneFile.ts'

const source = (path: string): string => fileURLToPath(new URL(`./src/${path}`, import.meta.url))

/** One HTML file that opens from disk, for whoever has no server and no network. */
export default defineConfig({
  base: './',
  resolve: { conditions: ['@swardsink/source', ...defaultClientConditions] },
  plugins: [
    carriedWorkers({ page: source('main.ts'), worker: source('worker/entry.ts') }),
    oneFile('swardsink.html'),
  ],
  publicDir: false,
  build: {
    outDir: '../../dist',
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: Number.POSITIVE_INFINITY,
    cssCodeSplit: false,
    modulePreload: false,
    // The helper of later imports asks import.meta only in modules; here nothing is imported later.
    rolldownOptions: { output: { format: 'iife', codeSplitting: false }, checks: { emptyImportMeta: false } },
  },
})
