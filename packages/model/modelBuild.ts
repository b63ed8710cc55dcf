import type { Rolldown, UserConfig } from 'vite'

/** What the builds of library and command line share. */
export const modelBuild = (q: {
  readonly entry: Record<string, string>
  readonly output: Rolldown.OutputOptions
}): UserConfig => ({
  build: {
    target: 'es2022',
    // Read by people in stack traces and bundled again by whoever ships it: nothing is gained by shortening names.
    minify: false,
    sourcemap: true,
    lib: { entry: q.entry, formats: ['es'] },
    rolldownOptions: {
      // The command line runs in Node; the library itself asks for nothing.
      external: [/^node:/, /^mathjs/, 'papaparse'],
      output: q.output,
    },
  },
})
