import { defaultClientConditions, defineConfig } from 'vite'
import { contentPolicy, servedPolicy } from './tools/contentPolicy.ts'

export default defineConfig({
  // Relative, so that the built folder works under any path of any server.
  base: './',
  resolve: { conditions: ['@swardsink/source', ...defaultClientConditions] },
  plugins: [contentPolicy(servedPolicy)],
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    // Small pictures stay files: the policy then need not tell an inlined one from an injected one.
    assetsInlineLimit: 0,
    // Every browser that runs this target preloads modules by itself; the stand-in would need a connect-src.
    modulePreload: { polyfill: false },
    sourcemap: true,
  },
})
