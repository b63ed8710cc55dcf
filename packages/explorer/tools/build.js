// node build.js [page] [file] [model] [--stale]: all three unless named; with --stale only what its sources have left behind.
import { execFile } from 'node:child_process'
import { createRequire } from 'node:module'
import { dirname, join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { isBuiltFrom, replaceBuild, sourcesHash } from './freshness.js'

const root = fileURLToPath(new URL('../../../', import.meta.url))
const explorer = join(root, 'packages/explorer')
const model = join(root, 'packages/model')

const pageSources = [
  'package-lock.json',
  'packages/model/src',
  'packages/explorer/src',
  'packages/explorer/public',
  'packages/explorer/index.html',
  'packages/explorer/vite.config.ts',
  'packages/explorer/vite.file.config.ts',
  'packages/explorer/tools',
]
const modelSources = [
  'package-lock.json',
  'packages/model/src',
  'packages/model/bin',
  'packages/model/modelBuild.ts',
  'packages/model/vite.command.config.ts',
  'packages/model/vite.config.ts',
  'packages/model/tsconfig.build.json',
  'packages/model/package.json',
]

/** @typedef {{ folder: string, sources: readonly string[], build: (into: string) => Promise<void> }} Target */
/** @type {Record<'page' | 'file' | 'model', Target>} */
const targets = {
  page: {
    folder: join(explorer, 'dist'),
    sources: pageSources,
    build: into => bundle(explorer, 'vite.config.ts', into),
  },
  file: {
    folder: join(root, 'dist'),
    sources: pageSources,
    build: into => bundle(explorer, 'vite.file.config.ts', into),
  },
  model: {
    folder: join(model, 'dist'),
    sources: modelSources,
    build: async into => {
      await bundle(model, 'vite.command.config.ts', into)
      await bundle(model, 'vite.config.ts', into, { beside: true })
      await declare(into)
    },
  },
}

/** @param {string} root @param {string} configFile @param {string} into @param {{ beside?: boolean }} [options] */
async function bundle(root, configFile, into, { beside = false } = {}) {
  // Set by a test runner, it would carry the development form of libraries into the page.
  process.env.NODE_ENV = 'production'
  const { build } = await import('vite')
  await build({
    root,
    configFile: join(root, configFile),
    logLevel: 'warn',
    build: { outDir: into, emptyOutDir: !beside },
  })
}

/** @param {string} into */
async function declare(into) {
  const compiler = join(dirname(createRequire(import.meta.url).resolve('typescript/package.json')), 'bin/tsc')
  try {
    await promisify(execFile)(process.execPath, [
      compiler,
      '-p',
      join(model, 'tsconfig.build.json'),
      '--outDir',
      into,
    ])
  } catch (error) {
    const { stdout } = /** @type {{ stdout?: string }} */ (error)
    throw new Error(`the model's declarations could not be written:\n${stdout ?? error}`)
  }
}

/**
 * Builds one thing unless it is already what its sources say; answers whether there was anything to do.
 * @param {keyof typeof targets} name
 * @param {{ always?: boolean }} [options]
 */
export async function buildStale(name, { always = false } = {}) {
  const { folder, sources, build } = targets[name]
  const hash = sourcesHash(root, sources)
  if (!always && isBuiltFrom(folder, hash)) return false
  await replaceBuild(folder, hash, build)
  return true
}

async function main() {
  const words = process.argv.slice(2)
  const names = /** @type {(keyof typeof targets)[]} */ (Object.keys(targets))
  const wanted = names.filter(name => words.includes(name))
  const unknown = words.filter(word => word !== '--stale' && !names.some(name => name === word))
  if (unknown.length > 0)
    throw new Error(`expected ${names.join(', ')} or --stale, received ${unknown.join(' ')}`)
  for (const name of wanted.length > 0 ? wanted : names) {
    const done = await buildStale(name, { always: !words.includes('--stale') })
    console.log(
      `${name}: ${done ? 'built' : 'nothing new'}, in ${relative(process.cwd(), targets[name].folder)}`,
    )
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  await main().catch(error => {
    console.error(error instanceof Error ? error.message : error)
    process.exitCode = 1
  })
}
