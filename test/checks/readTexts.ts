import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { filesBelow, repository } from '../support/files.ts'
import type { Texts } from './sourceProblems.ts'

const read = (path: string) => readFileSync(join(repository, path), 'utf8')

/** The documents and tests of this repository; the checks of sources do not check themselves. */
export function readTexts(): Texts {
  const paths = filesBelow('test', '.ts').filter(path => !/^test\/(checks\/|sources\.test)/.test(path))
  return {
    physics: read('docs/physics.md'),
    sources: read('docs/sources.md'),
    tests: new Map(paths.map(path => [path, read(path)])),
  }
}
