// The service worker of the served page. The build writes its list of files and their version into it. It answers
// from what was kept when it was installed and from nothing else, so that a page is never half old and half new; a
// newer one waits until no window of the older is open.

/** @type {readonly (readonly [path: string, integrity: string])[]} */
const files = JSON.parse('__FILES__')

/**
 * What a worker of this kind has for a global, as far as it is used here.
 * @typedef {object} KeepingWorker
 * @property {{ scope: string }} registration
 * @property {{ claim(): Promise<void> }} clients
 * @property {(name: string, hear: (event: KeeperEvent) => void) => void} addEventListener
 * @typedef {{ request: Request, waitUntil(work: Promise<unknown>): void, respondWith(answer: Promise<Response>): void }} KeeperEvent
 */
const keeper = /** @type {KeepingWorker} */ (/** @type {unknown} */ (globalThis))

const { scope } = keeper.registration
// Another copy under another path of this server keeps its own.
const ours = `swardsink ${scope} `
const edition = `${ours}__VERSION__`

async function fill() {
  const cache = await caches.open(edition)
  try {
    await Promise.all(
      files.map(async ([path, integrity]) => {
        const address = new URL(path, scope).href
        const response = await fetch(address, { cache: 'no-cache', integrity })
        if (!response.ok) throw new Error(`${address}: ${response.status}`)
        // An answer that came by a detour may not open a page: without the mark of it, it may.
        const { status, headers } = response
        await cache.put(address, new Response(await response.blob(), { status, headers }))
      }),
    )
  } catch (error) {
    await caches.delete(edition)
    throw error
  }
}

async function forgetOlder() {
  const names = await caches.keys()
  await Promise.all(
    names.filter(other => other.startsWith(ours) && other !== edition).map(other => caches.delete(other)),
  )
  // The page that installed it was loaded without it: what it fetches later comes from here too.
  await keeper.clients.claim()
}

/** @param {Request} request */
async function answer(request) {
  const { origin, pathname } = new URL(request.url)
  const asked = `${origin}${pathname}`
  const address = asked === `${scope}index.html` ? scope : asked
  const kept = await (await caches.open(edition)).match(address)
  return kept ?? fetch(request)
}

keeper.addEventListener('install', event => event.waitUntil(fill()))
keeper.addEventListener('activate', event => event.waitUntil(forgetOlder()))
keeper.addEventListener('fetch', event => {
  const { method, url } = event.request
  if (method === 'GET' && url.startsWith(scope)) event.respondWith(answer(event.request))
})
