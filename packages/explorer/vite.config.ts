import { defaultClientConditions, defineConfig } from 'vite'
import { contentPolicy, servedPolicy } from './tools/contentPolicy.ts'
import { offline } from './tools/offline.ts'

export default defineConfig({
  // Relative, so that the built folder works under any path of any server.
  base: './',
  resolve: { conditions: ['@swardsink/source', ...defaultClientConditions] },
  plugins: [contentPolicy(servedPolicy), offline(new URL('./tools/offlineWorker.js', import.meta.url))],
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    // Small pictures stay files: the policy then need not tell an inlined one from an injected one.
    assetsInlineLimit: 0,
    // What is fetched later is one chunk (the reader of formulas): nothing is gained by fetching it beforehand.
    modulePreload: false,
    sourcemap: true,
  },
})
