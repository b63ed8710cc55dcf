import {
  displayUnit,
  type ExportLanguage,
  exportFit,
  exportLanguages,
  methodsParagraph,
  sentence,
} from '@swardsink/model'
import { css, html, LitElement, nothing } from 'lit'
import { announce, fileName, handOver, paleStyles, wordStyles } from '../../controls/index.ts'
import { sharedStyles } from '../../look/index.ts'
import { decimalText } from '../../words/index.ts'
import type { Shown } from '../view.ts'
import type { FitResult, FitSettings, Fitted, Judged } from './kind.ts'
import { nextWords } from './nextWords.ts'
import { footWords } from './tables.ts'

const ENDINGS = { R: 'R', Python: 'py' } as const
/** The best few readings to make next. */
const SHOWN_NEXT = 5
const HUNDRED = 100

/** On request: other laws, the next reading; and for a report the paragraph and the scripts. */
export class FitMore extends LitElement {
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
        margin-top: var(--s-6);
      }
      section {
        margin-top: var(--s-4);
      }
      h3 {
        font-size: var(--t-text);
        margin-bottom: var(--s-2);
      }
      .words {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 0 var(--s-4);
      }
      .scrolls {
        overflow-x: auto;
      }
      th[scope='row'] {
        text-align: left;
        color: var(--ink);
        border-bottom: 1px solid var(--rule);
        vertical-align: middle;
        padding-left: 0;
      }
      .unit {
        display: block;
        font-size: var(--t-axis);
      }
      .paragraph {
        font-size: var(--t-note);
        line-height: 1.5;
        margin-bottom: var(--s-2);
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
  declare judged: Judged | null
  declare said: string

  constructor() {
    super()
    this.said = ''
  }

  override render() {
    const { settings, reader } = this.shown
    const said = reader.words.fit
    const word = (which: 'compare' | 'next') => {
      const on = settings[which]
      return html`<button class="word" aria-pressed=${on ? 'true' : 'false'} @click=${() => this.ask(which, !on)}>${on ? said[which].hide : said[which].show}</button>`
    }
    const pale = this.fitted.judged === null ? 'pale' : ''
    return html`
      <div class="words">${word('compare')}${word('next')}</div>
      <div class=${pale}>${settings.compare ? this.comparison() : nothing}${settings.next ? this.next() : nothing}</div>
      ${this.report()}
    `
  }

  private ask(which: 'compare' | 'next', on: boolean): void {
    announce(this, 'rearrange', { id: this.shown.id, settings: { [which]: on } })
  }

  private comparison() {
    const { reader } = this.shown
    const { compare: said, laws } = reader.words.fit
    const comparison = this.judged?.comparison
    if (!comparison) return nothing
    const number = (value: number | null, show: (value: number) => string) =>
      value === null ? said.none : show(value)
    // Against a known noise the scatter is a ratio, not a length.
    const known = comparison.likelihood === 'normal, variance known'
    const scatter = (value: number) => reader.format(value, known ? 'ratio' : 'sinkage', { unit: false })
    return html`<section aria-labelledby="compare">
      <h3 id="compare">${said.title}</h3>
      <div class="scrolls" tabindex="0" role="group" aria-label=${said.title}><table>
        <thead><tr>
          <th scope="col">${said.law}</th><th scope="col">${said.free}</th>
          <th scope="col">${said.scatter}<span class="unit">${known ? '' : displayUnit('sinkage', reader.units)}</span></th>
          <th scope="col">${said.difference}</th>
        </tr></thead>
        <tbody>${comparison.laws.map(
          ({ name, free, standardDeviation, difference }) => html`<tr>
            <th scope="row">${laws[name] ?? name}</th>
            <td>${number(free, String)}</td>
            <td>${number(standardDeviation, scatter)}</td>
            <td>${number(difference, value => decimalText(value, { decimals: 1, locale: reader.locale }))}</td>
          </tr>`,
        )}</tbody>
      </table></div>
      ${comparison.sentences.map(text => html`<p class="small">${reader.words.modelSays(text)}</p>`)}
      <p class="note">${said.likelihood[comparison.likelihood]}</p>
    </section>`
  }

  private next() {
    const { reader } = this.shown
    const { next: said } = reader.words.fit
    const next = this.judged?.next
    if (!next) return nothing
    if ('path' in next)
      return html`<p class="small">${said.problem(reader.words.modelSays(sentence(next)))}</p>`
    const { format, units } = reader
    const isHeight = next.aim.kind === 'height'
    return html`<section aria-labelledby="next">
      <h3 id="next">${said.title}</h3>
      <p class="small">${nextWords(next, reader)}</p>
      <div class="scrolls" tabindex="0" role="group" aria-label=${said.title}><table>
        <thead><tr>
          <th scope="col">${said.what}</th>
          <th scope="col">${said.load}<span class="unit">${displayUnit('load', units)}</span></th>
          <th scope="col">${said.expected}<span class="unit">${displayUnit('sinkage', units)}</span></th>
          <th scope="col">${isHeight ? said.narrows : said.narrowsAll}<span class="unit">%</span></th>
        </tr></thead>
        <tbody>${next.ranked.slice(0, SHOWN_NEXT).map(
          ({ candidate, expected, narrowed }) => html`<tr>
            <th scope="row">${footWords(candidate.foot, reader)}${candidate.set ? `, ${candidate.set}` : ''}</th>
            <td>${candidate.load === undefined ? '' : format(candidate.load, 'load', { unit: false })}</td>
            <td>${format(expected, 'sinkage', { unit: false })}</td>
            <td>${Math.round(HUNDRED * narrowed)}</td>
          </tr>`,
        )}</tbody>
      </table></div>
    </section>`
  }

  private get paragraph(): string {
    const { fit, question, given } = this.fitted
    const { loss, noise } = question
    const { units, words } = this.shown.reader
    return words.modelSays(methodsParagraph({ fit, noise, given, units, ...(loss ? { loss } : {}) }))
  }

  private report() {
    const { report: said } = this.shown.reader.words.fit
    return html`<section aria-labelledby="report">
      <h3 id="report">${said.title}</h3>
      <p class="paragraph">${this.paragraph}</p>
      <div class="words">
        <button class="word" @click=${this.copy}>${said.copy}</button>
        ${exportLanguages.map(
          language =>
            html`<button class="word" @click=${() => this.save(language)}>${said[language]}</button>`,
        )}
        <span class="note" role="status">${this.said}</span>
      </div>
    </section>`
  }

  private readonly copy = async (): Promise<void> => {
    const { report: said } = this.shown.reader.words.fit
    try {
      await navigator.clipboard.writeText(this.paragraph)
      this.said = said.copied
    } catch {
      const shown = this.renderRoot.querySelector('.paragraph')
      if (shown) getSelection()?.selectAllChildren(shown)
      this.said = said.notCopied
    }
  }

  private save(language: ExportLanguage): void {
    const { fit, question } = this.fitted
    const { words } = this.shown.reader
    const { report: said } = words.fit
    const { scenario, loss } = question
    const made = exportFit({
      fit,
      language,
      ...(scenario ? { scenario } : {}),
      ...(loss ? { robust: true } : {}),
    })
    const ending = made.kind === 'script' ? ENDINGS[language] : 'csv'
    handOver(new Blob([made.text], { type: 'text/plain;charset=utf-8' }), fileName(words.fit.title, ending))
    this.said = made.kind === 'script' ? said.script : said.asTable(words.modelSays(made.why))
  }
}

customElements.define('fit-more', FitMore)
