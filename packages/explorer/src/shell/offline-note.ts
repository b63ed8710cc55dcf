import { css, html, LitElement, nothing } from 'lit'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'

export type Kept = 'not yet' | 'kept' | 'newer waits'

/** The page has the first word on the machine: keeping itself waits until it has nothing else to do, ms at most. */
const PATIENCE = 3000

/** One sentence at the foot: whether the page opens without a network, and whether a newer one waits. */
export class OfflineNote extends LitElement {
  static override properties = { reader: { attribute: false }, kept: { state: true } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ]

  declare reader: Reader
  declare kept: Kept

  constructor() {
    super()
    this.kept = known
  }

  override connectedCallback(): void {
    super.connectedCallback()
    hears.add(this.heard)
    whenIdle(() => void keepPage())
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    hears.delete(this.heard)
  }

  private readonly heard = (): void => {
    this.kept = known
  }

  override render() {
    const { page } = this.reader.words
    const said = { 'not yet': '', kept: page.offline, 'newer waits': page.newer }[this.kept]
    return html`<p class="note" role="status">${said || nothing}</p>`
  }
}

let known: Kept = 'not yet'
const hears = new Set<() => void>()
let begun = false

function tell(next: Kept): void {
  known = next
  for (const hear of hears) hear()
}

function whenIdle(act: () => void): void {
  const idle = () =>
    'requestIdleCallback' in window
      ? requestIdleCallback(act, { timeout: PATIENCE })
      : setTimeout(act, PATIENCE)
  if (document.readyState === 'complete') idle()
  else window.addEventListener('load', idle, { once: true })
}

/** Only a page that was built to be installed has something to keep it: not one from disk, nor a live one. */
async function keepPage(): Promise<void> {
  const isBuilt = document.querySelector('link[rel="manifest"]') !== null
  if (begun || !isBuilt || !('serviceWorker' in navigator)) return
  begun = true
  try {
    const registration = await navigator.serviceWorker.register('./service-worker.js')
    if (registration.active) tell('kept')
    follow(registration.installing)
    follow(registration.waiting)
    registration.addEventListener('updatefound', () => follow(registration.installing))
  } catch {
    // Private windows and some policies refuse it: the page is then as it was without.
    begun = false
  }
}

/** A worker beside one that is at work has a newer page, and waits until no window of the older one is open. */
function follow(worker: ServiceWorker | null): void {
  if (!worker) return
  const look = (): void => {
    if (worker.state === 'activated') tell('kept')
    else if (worker.state === 'installed' && navigator.serviceWorker.controller) tell('newer waits')
  }
  look()
  worker.addEventListener('statechange', look)
}

customElements.define('offline-note', OfflineNote)
