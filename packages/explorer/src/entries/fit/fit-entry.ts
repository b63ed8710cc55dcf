import { html, LitElement, nothing, type PropertyValues } from 'lit'
import { announce, watchWidth, wordStyles } from '../../controls/index.ts'
import { fitCurve, setsFigure } from '../../figures/index.ts'
import { figureStyles, sharedStyles } from '../../look/index.ts'
import type { Shown } from '../view.ts'
import { feetOf, footKey } from './curve.ts'
import { alongsOf, fitFrame, fitSpec, setName, setsFrame, setsSpec } from './drawing.ts'
import { fitNote, reasonWords } from './finding.ts'
import { fitEntryStyles } from './fitEntryStyles.ts'
import type { FitResult, FitSettings, Fitted, Judged } from './kind.ts'
import { footWords } from './tables.ts'
import './fit-more.ts'
import './fit-settings.ts'
import './fit-told.ts'

/** A range of more than this, from its one end to its other, foretells nothing. */
const WIDE = 10

/** The fit: its figure, beside it what it says and what it cannot say, below it what is fitted. */
export class FitEntry extends LitElement {
  static override properties = { shown: { attribute: false } }
  static override styles = [sharedStyles, wordStyles, figureStyles, fitEntryStyles]

  declare shown: Shown<FitSettings, FitResult>
  private readonly width = watchWidth(this, '.drawn')
  private judged: Judged | null = null

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('shown')) return
    const { result } = this.shown
    if (result.outcome === 'none') this.judged = null
    else if (result.judged) this.judged = result.judged
  }

  override render() {
    const { shown } = this
    const { result } = shown
    const late = shown.stale ? 'late' : ''
    if (result.outcome === 'none')
      return html`<div class="main"><p class="caution">${reasonWords(shown)}</p>
        <fit-settings .shown=${shown}></fit-settings></div>`
    return html`
      <div class="main">
        ${this.choices(result)}
        <div class="drawn ${late}">${this.curve(result)}</div>
        <p class="note">${fitNote(shown)}</p>
      </div>
      <fit-told class=${late} .shown=${shown} .fitted=${result} .judged=${this.judged}></fit-told>
      <div class="rest">
        ${this.sets(result, late)}
        <fit-settings .shown=${shown}></fit-settings>
        <fit-more .shown=${shown} .fitted=${result} .judged=${this.judged}></fit-more>
      </div>
    `
  }

  /** What one more set will be like. */
  private nextSet(): string {
    const { reader } = this.shown
    const { sets: said } = reader.words.fit
    const population = this.judged?.population
    if (!population) return ''
    const { newSet, sets } = population
    if (newSet.kind !== 'interval')
      return 'why' in newSet
        ? said.undetermined(this.shown.reader.words.modelSays(newSet.why.replace(/\.$/, '')))
        : ''
    const ends = {
      low: reader.format(newSet.low, 'softness', { unit: false }),
      high: reader.format(newSet.high, 'softness'),
    }
    return newSet.high > WIDE * newSet.low ? said.wide(sets, ends) : said.next(ends)
  }

  private curve(fitted: Fitted) {
    const { shown } = this
    const width = this.width()
    const { curve } = fitted
    if (curve.points.length === 0)
      return html`<p class="caution">${shown.reader.words.fit.noCurve(shown.reader.words.modelSays(curve.why ?? ''))}</p>`
    return width === 0 ? nothing : fitCurve(fitSpec(shown, fitted), fitFrame(shown.reader, { curve, width }))
  }

  /** Whose curve, under which foot. */
  private choices({ fit, curve }: Fitted) {
    const { reader } = this.shown
    const said = reader.words.fit
    const sets = fit.turf ? [] : Object.keys(fit.turfs)
    const feet = feetOf(fit)
    return html`<div class="choices">
      ${this.select(
        said.set,
        sets.map(set => ({ value: set, text: setName(set, reader) })),
        { chosen: curve.set ?? '', setting: 'set' },
      )}
      ${this.select(
        said.foot,
        feet.map(foot => ({ value: footKey(foot), text: footWords(foot, reader) })),
        { chosen: footKey(curve.foot), setting: 'foot' },
      )}
    </div>`
  }

  private select(
    label: string,
    options: readonly { readonly value: string; readonly text: string }[],
    { chosen, setting }: { readonly chosen: string; readonly setting: 'set' | 'foot' },
  ) {
    if (options.length < 2) return nothing
    const changed = (event: Event) =>
      announce(this, 'rearrange', {
        id: this.shown.id,
        settings: { [setting]: (event.currentTarget as HTMLSelectElement).value },
      })
    return html`<label>${label} <select class="field" @change=${changed}>${options.map(
      ({ value, text }) => html`<option value=${value} ?selected=${value === chosen}>${text}</option>`,
    )}</select></label>`
  }

  private sets(fitted: Fitted, late: string) {
    const { shown } = this
    if (fitted.sets.length < 2) return nothing
    const { reader, id } = shown
    const { sets: said } = reader.words.fit
    // The intervals of all sets together come later than the curve: those of before stay until they are there.
    const spec = setsSpec(shown, { ...fitted, judged: this.judged })
    const width = this.width()
    const next = this.nextSet()
    const alongs = alongsOf(fitted)
    return html`<section class="sets ${late}" aria-labelledby="sets">
      <h3 id="sets">${said.title}</h3>
      ${
        alongs.length > 1
          ? html`<div class="choices" role="group" aria-label=${said.along}><span>${said.along}</span>${alongs.map(
              along => html`<button
                class="word"
                aria-pressed=${along === spec.along ? 'true' : 'false'}
                @click=${() => announce(this, 'rearrange', { id, settings: { along } })}
              >${said.alongs[along]}</button>`,
            )}</div>`
          : nothing
      }
      ${next === '' ? nothing : html`<p class="small">${next}</p>`}
      ${width === 0 ? nothing : setsFigure(spec, setsFrame(reader, { along: spec.along, width }))}
      <p class="note">${said.note}</p>
    </section>`
  }
}

customElements.define('fit-entry', FitEntry)
