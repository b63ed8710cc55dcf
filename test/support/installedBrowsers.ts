import { existsSync, readdirSync } from 'node:fs'
import { homedir } from 'node:os'
import { delimiter, join } from 'node:path'

/** A browser to start: where it is, how it was found, and what it needs in its environment. */
export type BrowserFound = {
  readonly path: string
  readonly from: string
  readonly environment?: Readonly<Record<string, string>>
}

const namesOnPath = [
  'google-chrome',
  'google-chrome-stable',
  'chromium',
  'chromium-browser',
  'microsoft-edge',
  'microsoft-edge-stable',
]

const programFiles = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap(
  name => process.env[name] ?? [],
)

const usualPlaces: readonly string[] =
  process.platform === 'darwin'
    ? ['Google Chrome', 'Chromium', 'Microsoft Edge'].flatMap(name => [
        `/Applications/${name}.app/Contents/MacOS/${name}`,
        join(homedir(), `Applications/${name}.app/Contents/MacOS/${name}`),
      ])
    : process.platform === 'win32'
      ? programFiles.flatMap(folder => [
          join(folder, 'Google/Chrome/Application/chrome.exe'),
          join(folder, 'Chromium/Application/chrome.exe'),
          join(folder, 'Microsoft/Edge/Application/msedge.exe'),
        ])
      : ['/opt/google/chrome/chrome', '/opt/microsoft/msedge/msedge', '/snap/bin/chromium']

/** Browsers of the machine, in the order to try them. */
export function installedBrowsers(): readonly BrowserFound[] {
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean)
  const onPath = namesOnPath.flatMap(name => folders.map(folder => join(folder, name)))
  return [...onPath, ...usualPlaces].filter(existsSync).map(path => ({ path, from: 'an installed browser' }))
}

/** Browsers that the driver of these tests has fetched for some project before, newest first. */
export function cachedBrowsers(expected: string): readonly BrowserFound[] {
  // The driver names one revision; any Chromium beside it in the same cache will do.
  const cut = expected.search(/[\\/]chromium(_headless_shell)?-\d+[\\/]/)
  const cache = process.env.PLAYWRIGHT_BROWSERS_PATH ?? (cut < 0 ? '' : expected.slice(0, cut))
  if (!existsSync(cache)) return []
  const revision = (folder: string) => Number(folder.slice(folder.lastIndexOf('-') + 1))
  return readdirSync(cache)
    .filter(folder => /^chromium(_headless_shell)?-\d+$/.test(folder))
    .sort((a, b) => revision(b) - revision(a))
    .flatMap(folder => executablesIn(join(cache, folder)))
    .map(path => ({ path, from: "the test driver's cache" }))
}

function executablesIn(folder: string): readonly string[] {
  const names = ['chrome', 'chrome.exe', 'headless_shell', 'chrome-headless-shell', 'Contents/MacOS/Chromium']
  return readdirSync(folder)
    .flatMap(platform => [platform, join(platform, 'Chromium.app')])
    .flatMap(inside => names.map(name => join(folder, inside, name)))
    .filter(existsSync)
}
