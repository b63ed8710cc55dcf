import { type Browser, chromium } from 'playwright-core'
import { type BrowserFound, cachedBrowsers, installedBrowsers } from './installedBrowsers.ts'
import { packedChromium, packedChromiumFits } from './packedChromium.ts'

const quiet = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

const asRoot = process.getuid?.() === 0

/** A real Chromium: the one in CHROME_PATH, an installed one, the driver's own, or a packed one fetched for this. */
export async function openBrowser(): Promise<Browser> {
  const chosen = process.env.CHROME_PATH
  if (chosen) return start({ path: chosen, from: 'CHROME_PATH' })

  const refusals: string[] = []
  for (const found of [...installedBrowsers(), ...cachedBrowsers(chromium.executablePath())]) {
    try {
      return await start(found)
    } catch (error) {
      // One that is there need not be whole: some systems install a stand-in that only says where to get it.
      refusals.push(`${found.from} (${found.path}): ${String(error).split('\n', 1)[0]}`)
    }
  }
  if (packedChromiumFits) return start(await packedChromium())
  throw new Error(
    [
      'These tests need a Chromium, Chrome or Edge, and none was found that starts.',
      'Install one of them, or give the path of its program in the environment variable CHROME_PATH.',
      ...refusals,
    ].join('\n'),
  )
}

/** Keeps the browser's sandbox where the machine allows one: never for root, not in every container. */
async function start(found: BrowserFound): Promise<Browser> {
  const options = {
    executablePath: found.path,
    args: quiet,
    env: { ...process.env, ...found.environment },
  }
  if (asRoot) return chromium.launch({ ...options, chromiumSandbox: false })
  try {
    return await chromium.launch({ ...options, chromiumSandbox: true })
  } catch (error) {
    if (!/sandbox/i.test(String(error))) throw error
    return chromium.launch({ ...options, chromiumSandbox: false })
  }
}
