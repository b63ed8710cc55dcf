// What has been built remembers what it was built from, so that nobody has to know when to build again.
import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { chmod, mkdir, mkdtemp, rename, rm, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'

const record = '.built-from'

/**
 * One number for the names and contents of all these files and folders. Contents rather than times: a checkout of
 * an older state is newer on disk.
 * @param {string} root
 * @param {readonly string[]} paths relative to the root; one that is absent counts as absent
 */
export function sourcesHash(root, paths) {
  const hash = createHash('sha256')
  for (const path of paths.flatMap(path => filesBelow(root, path))) {
    hash
      .update(`${path}\0`)
      .update(readFileSync(join(root, path)))
      .update('\0')
  }
  return hash.digest('hex')
}

/** @param {string} root @param {string} path @returns {string[]} */
function filesBelow(root, path) {
  const full = join(root, path)
  if (!existsSync(full)) return []
  if (!statSync(full).isDirectory()) return [path]
  return readdirSync(full)
    .sort()
    .flatMap(name => filesBelow(root, join(path, name)))
}

/** @param {string} folder @param {string} hash */
export function isBuiltFrom(folder, hash) {
  const path = join(folder, record)
  return existsSync(path) && readFileSync(path, 'utf8') === hash
}

/**
 * Builds into a folder beside the wanted one and puts it in its place when whole, so that whoever is reading the
 * old one meets no half of the new.
 * @param {string} folder
 * @param {string} hash of the sources, taken before they are read
 * @param {(into: string) => Promise<void>} build
 */
export async function replaceBuild(folder, hash, build) {
  // On the same disk as what it becomes, in a folder that version control leaves out.
  const beside = join(dirname(folder), '.cache')
  await mkdir(beside, { recursive: true })
  const staging = await mkdtemp(join(beside, 'build-'))
  try {
    await chmod(staging, 0o755)
    await build(staging)
    await writeFile(join(staging, record), hash)
    await putInPlace(staging, folder)
  } finally {
    await rm(staging, { recursive: true, force: true })
  }
}

/** @param {string} staging @param {string} folder */
async function putInPlace(staging, folder) {
  const attempts = 5
  for (let attempt = 1; ; attempt++) {
    await rm(folder, { recursive: true, force: true })
    try {
      await rename(staging, folder)
      return
    } catch (error) {
      // Another run may put its own build there between the two steps.
      if (attempt === attempts) throw error
    }
  }
}
