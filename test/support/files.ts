import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The top of the repository. */
export const repository = fileURLToPath(new URL('../..', import.meta.url))

const notOurs = new Set(['node_modules', 'dist', 'coverage', '.git', '.cache'])

/** Every file below a folder of the repository that ends in one of these, by its path from the top. */
export function filesBelow(folder: string, ...endings: readonly string[]): readonly string[] {
  return readdirSync(join(repository, folder), { withFileTypes: true })
    .filter(entry => !notOurs.has(entry.name))
    .flatMap(entry => {
      const path = folder ? `${folder.replace(/\/$/, '')}/${entry.name}` : entry.name
      if (entry.isDirectory()) return filesBelow(path, ...endings)
      return entry.isFile() && endings.some(ending => path.endsWith(ending)) ? [path] : []
    })
    .sort()
}
