import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { createServer, defaultClientConditions } from 'vite'
import { openBrowser } from '../../../support/browser.ts'

// node test/support/runScript.js test/explorer/figures/gallery/pictures.ts FOLDER QUERY…
// One picture a query, such as "figure=side&width=560"; what may be asked for stands in gallery.ts.
const [folder, ...queries] = process.argv.slice(2)
if (!folder) throw new Error('give a folder for the pictures, then queries')
await mkdir(folder, { recursive: true })
const server = await createServer({
  root: import.meta.dirname,
  configFile: false,
  logLevel: 'error',
  resolve: { conditions: ['@swardsink/source', ...defaultClientConditions] },
  server: { port: 0, fs: { allow: [join(import.meta.dirname, '../../../..')] } },
})
await server.listen()
const address = server.resolvedUrls?.local[0] ?? ''
const browser = await openBrowser()
for (const query of queries) {
  const asked = new URLSearchParams(query)
  const width = Number(asked.get('width') ?? 792)
  const columns = Math.max(1, Math.floor(1640 / (width + 16)))
  const page = await browser.newPage({ viewport: { width: columns * (width + 16) + 16, height: 600 } })
  page.on('console', message => console.log(message.type(), message.text()))
  page.on('pageerror', error => console.log(String(error)))
  if (asked.has('forced')) await page.emulateMedia({ forcedColors: 'active' })
  await page.goto(`${address}?${query}`)
  await page.waitForSelector('body[data-done]', { state: 'attached' })
  await page.screenshot({ path: join(folder, `${query.replaceAll(/[=&]/g, '-')}.png`), fullPage: true })
  await page.close()
}
await browser.close()
await server.close()
