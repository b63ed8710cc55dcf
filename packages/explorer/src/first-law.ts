import { formatQuantity, fromDisplay, pressureAt, type QuantityName } from '@swardsink/model'
import { css, html, LitElement } from 'lit'
import type { CurveAnswer, CurveQuestion } from './curveWorker.ts'

/** The linear law, live: how hard turf of a given softness pushes back at a given sinkage. */
export class FirstLaw extends LitElement {
  static override properties = { sinkage: { state: true }, softness: { state: true }, curve: { state: true } }
  static override styles = css`
    :host { display: block; max-inline-size: 38rem; margin: 2rem auto; padding: 0 1rem; font: 1.0625rem/1.5 sans-serif }
    label { display: block; margin-block: 0.5rem }
    input { font: inherit; inline-size: 6em; padding: 0.25rem }
    table { border-collapse: collapse; font-variant-numeric: tabular-nums }
    th, td { padding: 0 1rem 0 0; text-align: end }
  `

  declare sinkage: number
  declare softness: number
  declare curve: CurveAnswer
  private readonly worker = new Worker(new URL('./curveWorker.ts', import.meta.url), { type: 'module' })

  constructor() {
    super()
    this.sinkage = fromDisplay(1.2, 'sinkage', 'metric')
    this.softness = fromDisplay(9, 'softness', 'metric')
    this.curve = []
    this.worker.addEventListener('message', (event: MessageEvent<CurveAnswer>) => {
      this.curve = event.data
    })
  }

  override updated(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('softness')) this.worker.postMessage({ softness: this.softness } satisfies CurveQuestion)
  }

  override render() {
    const pressure = pressureAt({ kind: 'linear', softness: this.softness }, this.sinkage)
    return html`
      <h1>Swardsink</h1>
      <p>Turf pushes back harder the further a roller sinks into it. This page shows one law of that, live.</p>
      ${this.field('sinkage', 'Sinkage')} ${this.field('softness', 'Softness: sinkage under 100 kPa')}
      <p>The turf pushes back with <output>${formatQuantity(pressure, 'pressure')}</output>.</p>
      <table>
        <thead><tr><th scope="col">Sinkage</th><th scope="col">Pressure</th></tr></thead>
        <tbody>
          ${this.curve.map(
            point => html`<tr>
              <td>${formatQuantity(point.sinkage, 'sinkage')}</td>
              <td>${formatQuantity(point.pressure, 'pressure')}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    `
  }

  private field(name: 'sinkage' | 'softness', label: string) {
    const quantity: QuantityName = name
    return html`<label>
      ${label}, mm
      <input
        type="number"
        min="0"
        step="any"
        .value=${formatQuantity(this[name], quantity, { unit: false })}
        @input=${(event: InputEvent) => this.take(name, event)}
      >
    </label>`
  }

  private take(name: 'sinkage' | 'softness', event: InputEvent): void {
    const shown = (event.target as HTMLInputElement).valueAsNumber
    // A half-typed number keeps the last good answer.
    const least = name === 'softness' ? Number.MIN_VALUE : 0
    if (shown >= least) this[name] = fromDisplay(shown, name, 'metric')
  }
}
