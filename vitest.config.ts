import { defaultServerConditions } from 'vite'
import { defineConfig } from 'vitest/config'

// The model's source instead of its build, so that a test never answers for an older build.
const fromSource = {
  ssr: { resolve: { conditions: ['@swardsink/source', ...defaultServerConditions] } },
}

export default defineConfig({
  test: {
    passWithNoTests: true,
    reporters: ['default', './test/support/closingLine.ts'],
    projects: [
      {
        ...fromSource,
        test: {
          name: 'model',
          setupFiles: ['./test/support/seeded.ts'],
          include: ['test/model/**/*.test.ts', 'test/*.test.ts'],
        },
      },
      {
        ...fromSource,
        test: {
          name: 'explorer',
          setupFiles: ['./test/support/seeded.ts', './test/support/everyWord.ts'],
          include: ['test/explorer/**/*.test.ts'],
        },
      },
      {
        ...fromSource,
        test: {
          name: 'browser',
          include: ['test/browser/**/*.test.ts'],
          // One browser at a time: pages that share a core with another page measure the neighbour.
          fileParallelism: false,
          testTimeout: 60_000,
          // What a page does after a click it does soon, but not always within a second of a busy machine.
          expect: { poll: { timeout: 8000 } },
          // The first one may have to build the page and fetch a browser.
          hookTimeout: 300_000,
        },
      },
    ],
  },
})
