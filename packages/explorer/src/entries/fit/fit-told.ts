import { css, html, LitElement, nothing } from 'lit'
import { announce, paleStyles, wordStyles } from '../../controls/index.ts'
import { sharedStyles } from '../../look/index.ts'
import type { Shown } from '../view.ts'
import type { FitResult, FitSettings, Fitted, Judged } from './kind.ts'
import { intervalReasons, numberRows } from './numbers.ts'
import { withFittedTurf } from './useTurf.ts'

/** Beside the figure: the numbers with their intervals, what the readings cannot tell, and what to look at again. */
export class FitTold extends LitElement {
  static override properties = {
    shown: { attribute: false },
    fitted: { attribute: false },
    judged: { attribute: false },
    said: { state: true },
  }
  static override styles = [
    sharedStyles,
    wordStyles,
    paleStyles,
    css`
      :host {
        display: block;
        min-width: 0;
      }
      table {
        width: 100%;
        margin-bottom: var(--s-2);
      }
      th[scope='row'] {
        text-align: left;
        color: var(--ink);
        border-bottom: 1px solid var(--rule);
        vertical-align: middle;
        padding-left: 0;
      }
      tbody tr:last-child > * {
        border-bottom-color: var(--ink-3);
      }
      .words {
        margin: var(--s-2) 0;
      }
      section {
        margin-top: var(--s-6);
      }
      h3 {
        margin-bottom: var(--s-2);
      }
      .untold {
        position: relative;
        padding-left: calc(12px + var(--s-4));
      }
      /* The stipple of what is not known, as in the figures. */
      .untold::before {
        content: '';
        position: absolute;
        inset: 0 auto 0 0;
        width: 12px;
        background-image: radial-gradient(circle at 2px 2px, var(--ink-3) 0.9px, transparent 1.2px),
          radial-gradient(circle at 6px 6px, var(--ink-3) 0.9px, transparent 1.2px);
        background-size: 8px 8px;
        print-color-adjust: exact;
      }
      .small + .small {
        margin-top: var(--s-2);
      }
      @media print {
        .words {
          display: none;
        }
      }
    `,
  ]

  declare shown: Shown<FitSettings, FitResult>
  declare fitted: Fitted
  /** What was last judged, while the next is being worked out. */
  declare judged: Judged | null
  declare said: string

  constructor() {
    super()
    this.said = ''
  }

  override render() {
    const { fitted, judged, shown } = this
    const { reader } = shown
    const { fit: said } = reader.words
    const pale = fitted.judged === null ? 'pale' : ''
    return html`
      ${this.numbers()}
      ${intervalReasons(fitted, reader).map(text => html`<p class="note">${text}</p>`)}
      ${judged ? html`<p class="note ${pale}">${reader.words.modelSays(judged.judgement.lackOfFit.sentence)}</p>` : nothing}
      <div class="words"><button class="word" @click=${this.use}>${said.turf.use}</button>
        <span class="note" role="status">${this.said}</span></div>
      ${this.untold(pale)}
      ${this.look(pale)}
    `
  }

  private numbers() {
    const { table } = this.shown.reader.words.fit
    return html`<table>
      <caption class="unseen">${table.caption}</caption>
      <thead><tr><th scope="col">${table.quantity}</th><th scope="col">${table.value}</th><th scope="col">${table.interval}</th></tr></thead>
      <tbody>${numberRows(this.fitted, this.shown.reader, 'drawn').map(
        ({ name, value, interval }) =>
          html`<tr><th scope="row">${name}</th><td>${value}</td><td>${interval}</td></tr>`,
      )}</tbody>
    </table>`
  }

  private untold(pale: string) {
    const { fitted, judged, shown } = this
    const { modelSays, fit: words } = shown.reader.words
    const { cannotTell: said, working } = words
    return html`<section aria-labelledby="untold" class="untold">
      <h3 id="untold">${said.title}</h3>
      ${
        judged
          ? judged.judgement.cannotTell.map(
              ({ sentence }) => html`<p class="small ${pale}">${modelSays(sentence)}</p>`,
            )
          : html`<p class="small">${working}</p>`
      }
      ${this.beyond(fitted)}
      <p class="small">${said.more}</p>
    </section>`
  }

  private beyond({ fit }: Fitted) {
    const { words, format } = this.shown.reader
    const { cannotTell: said } = words.fit
    const [span, quantity] = fit.loads ? [fit.loads, 'load' as const] : [fit.pressures, 'pressure' as const]
    if (!span) return nothing
    const ends = { low: format(span.low, quantity, { unit: false }), high: format(span.high, quantity) }
    return html`<p class="small">${quantity === 'load' ? said.loads(ends) : said.pressures(ends)}</p>`
  }

  private look(pale: string) {
    const { judged, fitted, shown } = this
    const { modelSays, fit: said } = shown.reader.words
    const { outcome, why, notes } = fitted.fit
    const sentences = [
      ...(outcome === 'stopped' ? [said.stopped(modelSays(why.replace(/\.$/, '')))] : []),
      ...[...(judged?.judgement.residuals.sentences ?? []), ...notes].map(modelSays),
    ]
    if (sentences.length === 0) return nothing
    return html`<section aria-labelledby="look" class=${pale}>
      <h3 id="look">${said.look}</h3>
      ${sentences.map(text => html`<p class="small">${text}</p>`)}
    </section>`
  }

  private readonly use = (): void => {
    const { id, now, reader } = this.shown
    const { scenario, name } = withFittedTurf(this.fitted, { id, now, reader })
    announce(this, 'replace', { scenario })
    this.said = reader.words.fit.turf.used(name)
  }
}

customElements.define('fit-told', FitTold)
