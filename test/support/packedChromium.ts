import { execFile } from 'node:child_process'
import { createReadStream, createWriteStream, existsSync } from 'node:fs'
import { chmod, copyFile, mkdir, mkdtemp, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { createBrotliDecompress } from 'node:zlib'
import type { BrowserFound } from './installedBrowsers.ts'

const manifests = fileURLToPath(new URL('./packed-chromium/', import.meta.url))
const caches = fileURLToPath(new URL('../../node_modules/.cache/swardsink/', import.meta.url))

/** The package is built for this one; anything else has to bring its own browser. */
export const packedChromiumFits = process.platform === 'linux' && process.arch === 'x64'

/** A Chromium from the package registry, fetched and unpacked the first time it is asked for. */
export async function packedChromium(): Promise<BrowserFound> {
  const version = await pinnedVersion()
  const home = join(caches, `chromium-${version}`)
  if (!existsSync(home)) await unpackInto(home)
  return {
    path: join(home, 'chromium'),
    from: `the packed Chromium ${version}`,
    environment: {
      LD_LIBRARY_PATH: [join(home, 'lib'), process.env.LD_LIBRARY_PATH].filter(Boolean).join(':'),
      FONTCONFIG_FILE: join(home, 'fonts.conf'),
    },
  }
}

async function pinnedVersion(): Promise<string> {
  const manifest = JSON.parse(await readFile(join(manifests, 'package.json'), 'utf8')) as {
    dependencies: { '@sparticuz/chromium': string }
  }
  return manifest.dependencies['@sparticuz/chromium']
}

/** Everything happens in a folder of its own, renamed when complete: two runs at once cannot meet in one half. */
async function unpackInto(home: string): Promise<void> {
  await mkdir(caches, { recursive: true })
  const staging = await mkdtemp(`${home}.`)
  try {
    await install(staging)
    const packed = join(staging, 'node_modules/@sparticuz/chromium/bin')
    await Promise.all([
      pipeline(
        createReadStream(join(packed, 'chromium.br')),
        createBrotliDecompress(),
        createWriteStream(join(staging, 'chromium'), { mode: 0o755 }),
      ),
      // Libraries a bare system lacks (lib/), fonts (fonts/), and drawing without a graphics card (beside the browser).
      ...['al2023', 'fonts', 'swiftshader'].map(name => untar(join(packed, `${name}.tar.br`), staging)),
    ])
    await writeFile(join(staging, 'fonts.conf'), fontsConfiguration(home))
    await rm(join(staging, 'node_modules'), { recursive: true })
    // The staging folder is its maker's alone; the browser is for every user of this checkout.
    await chmod(staging, 0o755)
    await rename(staging, home)
  } catch (error) {
    // Another run may have got there first; that one is as good.
    if (!existsSync(home)) throw error
  } finally {
    await rm(staging, { recursive: true, force: true })
  }
}

async function install(folder: string): Promise<void> {
  for (const name of ['package.json', 'package-lock.json'])
    await copyFile(join(manifests, name), join(folder, name))
  // The package asks for a newer Node than this project; nothing of it but its archives is used.
  const words = [
    'ci',
    '--ignore-scripts',
    '--no-audit',
    '--no-fund',
    '--loglevel=error',
    '--engine-strict=false',
  ]
  const npm = process.env.npm_execpath
  const [command, before] = npm?.endsWith('.js') ? [process.execPath, [npm]] : ['npm', []]
  try {
    await promisify(execFile)(command, [...before, ...words, '--prefix', folder], { cwd: folder })
  } catch (cause) {
    throw new Error(`Could not fetch the packed Chromium from the package registry.`, { cause })
  }
}

async function untar(archive: string, folder: string): Promise<void> {
  const { extract } = createRequire(dirname(archive))('tar-fs') as {
    extract(to: string): NodeJS.WritableStream
  }
  await pipeline(createReadStream(archive), createBrotliDecompress(), extract(folder))
}

/**
 * One family whatever is asked for, so that text has the same widths on every machine; fonts of the system only
 * lend the characters it lacks. Without a configuration of its own a machine without fonts shows no text at all.
 */
const fontsConfiguration = (home: string) => `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${home}/fonts</dir>
  <dir>/usr/share/fonts</dir>
  <dir>/usr/local/share/fonts</dir>
  <match target="pattern">
    <edit name="family" mode="prepend" binding="strong"><string>Open Sans</string></edit>
  </match>
  <cachedir>${home}/fonts-cache</cachedir>
</fontconfig>
`
