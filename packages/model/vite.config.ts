import { defineConfig } from 'vite'

export default defineConfig({
  build: {
    target: 'es2022',
    // Read by people in stack traces and bundled again by whoever ships it: nothing is gained by shortening names.
    minify: false,
    sourcemap: true,
    lib: {
      entry: { index: 'src/index.ts', command: 'bin/command.ts' },
      formats: ['es'],
    },
    rolldownOptions: {
      // The command line runs in Node; the library itself asks for nothing.
      external: [/^node:/, /^mathjs/, 'papaparse'],
      output: { chunkFileNames: 'parts/[name].js' },
    },
  },
})
