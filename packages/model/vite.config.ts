import { defineConfig } from 'vite'
import { modelBuild } from './modelBuild.ts'

/** The library, module by module: whoever bundles it again leaves out what is not asked for. */
export default defineConfig(
  modelBuild({
    entry: { index: 'src/index.ts' },
    output: { preserveModules: true, preserveModulesRoot: 'src' },
  }),
)
