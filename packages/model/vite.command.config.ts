import { defineConfig } from 'vite'
import { modelBuild } from './modelBuild.ts'

/** The command line, in few files: it starts the sooner the fewer it has to open. */
export default defineConfig(
  modelBuild({ entry: { command: 'bin/command.ts' }, output: { chunkFileNames: 'parts/[name].js' } }),
)
