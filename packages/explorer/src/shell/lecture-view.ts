import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit'
import { keyed } from 'lit/directives/keyed.js'
import { bookOf, entryOf, heldBackBy, lecturePlan, type Plan, type Step } from '../book/index.ts'
import { announce, listen, paleStyles, wordStyles } from '../controls/index.ts'
import type { Shown } from '../entries/view.ts'
import { sharedStyles } from '../look/index.ts'
import { cautionSentence, type Reader } from '../words/index.ts'
import type { BookDesk } from './bookDesk.ts'
import { failureSentence } from './failureSentence.ts'
import { settingPlace } from './findSetting.ts'
import { fitSlide } from './fitSlide.ts'
import { lectureClock } from './lectureClock.ts'
import { lectureStyles } from './lectureStyles.ts'
import { lectureWalk } from './lectureWalk.ts'
import { listenPageKeys } from './listenPageKeys.ts'
import { announceReader } from './readerEvents.ts'
import { openSheetWindow, type SheetWindow } from './sheetWindow.ts'
import { shownOf } from './shownOf.ts'
import { type StepParts, stepFinding, stepQuestion, stepSentence, stepTitle } from './stepWords.ts'
import { sheetPaper, teacherSheet, teacherSheetStyles } from './teacherSheet.ts'

/** What a browser's type is unless somebody has changed it, px. */
const USUAL_TYPE = 16
/** A sentence of so many letters is set smaller, so that the figure keeps its room. */
const LONG = 85

/** A book on the wall: one entry at a time, with the one sentence that belongs to it, and a sheet for the teacher. */
export class LectureView extends LitElement {
  static override properties = {
    desk: { attribute: false },
    page: { type: Number },
    reader: { attribute: false },
    turn: { type: Number },
    at: { state: true },
    sheetHere: { state: true },
    said: { state: true },
  }
  static override styles = [sharedStyles, wordStyles, paleStyles, lectureStyles]

  declare desk: BookDesk
  /** The page it begins with, from 0. */
  declare page: number
  declare reader: Reader
  /** Counts answers: the flow tells of a new one by it. */
  declare turn: number
  /** The step that is shown, from 0. */
  declare at: number
  /** The teacher's sheet stands under the slide. */
  declare sheetHere: boolean
  declare said: string
  private sheet: SheetWindow | null = null
  private unlistenSheet = (): void => undefined
  private unlisten: readonly (() => void)[] = []
  private readonly clock = lectureClock(this)
  private readonly fit = fitSlide(this)
  /** The same reader is one object: elements can tell by it that nothing has changed. */
  private wall: { readonly of: Reader; readonly key: string; readonly reader: Reader } | null = null

  constructor() {
    super()
    this.at = -1
    this.sheetHere = false
    this.said = ''
    listen(this, 'find', ({ name }) => this.goTo(name))
    // What would leave for a page is done here: the room stays with the slides.
    this.addEventListener('sward-find', event => event.stopPropagation())
  }

  override connectedCallback(): void {
    super.connectedCallback()
    const close = () => this.closeSheet()
    window.addEventListener('pagehide', close)
    this.unlisten = [
      listenPageKeys(window, { turn: by => this.go(by), leave: () => this.leave() }),
      () => window.removeEventListener('pagehide', close),
    ]
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    for (const stop of this.unlisten) stop()
    this.closeSheet()
  }

  private get plan(): Plan {
    return lecturePlan(bookOf(this.desk.session()))
  }

  override willUpdate(): void {
    const { steps } = this.plan
    if (this.at < 0)
      this.at = Math.max(
        0,
        steps.findIndex(step => step.page === this.page),
      )
    this.at = Math.min(this.at, steps.length - 1)
  }

  override updated(changed: PropertyValues<this>): void {
    this.drawSheet()
    if (!changed.has('at')) return
    const { steps } = this.plan
    // Its neighbours, so that a turn shows them at once, and what the room is asked next, for the sheet.
    const beside = steps.slice(Math.max(0, this.at - 1), this.at + 2)
    const asked = this.askedAfter()
    const near = [...beside, ...(asked ? [asked] : [])].flatMap(({ entry }) => entry ?? [])
    this.desk.look(new Set(near))
    this.renderRoot.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true })
    window.scrollTo(0, 0)
    this.renderRoot.querySelector('.body')?.scrollTo(0, 0)
  }

  private readonly go = (by: 1 | -1): void => {
    const { steps } = this.plan
    const to = Math.min(Math.max(this.at + by, 0), steps.length - 1)
    if (to === this.at) return
    this.clock.beginOnce()
    this.at = to
  }

  /** The step on which something is set; where none has it the slide stays. */
  private goTo(name: string): void {
    const { desk, plan } = this
    const page = plan.steps[this.at]?.page ?? 0
    const id = settingPlace(bookOf(desk.session()), { name, page, kinds: desk.house.kinds.items })
    const to = plan.steps.findIndex(step => step.entry !== null && step.entry === id)
    if (to >= 0) this.at = to
  }

  private leave(): void {
    announceReader(this, 'leave', { page: this.plan.steps[this.at]?.page ?? 0 })
  }

  /** Figures are laid out in px: they grow with the type of the slide, and stay within its height. */
  private get onWall(): Reader {
    const { reader } = this
    const scale = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / USUAL_TYPE
    const room = this.fit.room()
    const key = `${scale} ${room}`
    if (this.wall?.of !== reader || this.wall.key !== key) {
      // Less a line: labels may stand a little outside what was asked for.
      const tallest = room === null ? {} : { tallest: room - USUAL_TYPE * scale }
      const figureText = Math.round(reader.figureText * scale)
      this.wall = { of: reader, key, reader: { ...reader, figureText, ...tallest } }
    }
    return this.wall.reader
  }

  private parts(step: Step): StepParts {
    const { desk, onWall: reader } = this
    const session = desk.session()
    const book = bookOf(session)
    const shownBy = (id: string): Shown | null => {
      const entry = entryOf(book, id)
      const state = desk.flow.stateOf(id)
      if (entry && heldBackBy(book, entry, desk.house.kinds.items)) return null
      return entry ? shownOf({ entry, state, now: book.scenario, held: session.held, reader }) : null
    }
    return { book, step, views: desk.house.views.items, shownBy, reader }
  }

  override render() {
    const { plan, at, reader } = this
    const step = plan.steps[at]
    if (!step) return nothing
    const parts = this.parts(step)
    const { lecture, page } = reader.words
    const sentence = stepSentence(parts)
    const book = parts.book.title || page.untitledBook
    const place = { number: String(at + 1), total: String(plan.steps.length) }
    return html`<main class="slide" aria-label=${lecture.step({ book, ...place })}>
        <h1 tabindex="-1" class=${sentence.length > LONG ? 'long' : ''}>${sentence}</h1>
        ${keyed(at, html`<div class="body" role="region" aria-label=${lecture.overflows} tabindex=${this.fit.overflows() ? '0' : nothing}>${this.body(parts)}</div>`)}
        <footer>
          <span>${lecture.step({ book, ...place })}</span>
          <span class="turn">
            <button class="word" ?disabled=${at === 0} @click=${() => this.go(-1)}>${lecture.earlier}</button>
            ${lectureWalk(plan, { at, label: lecture.walk(place) })}
            <button class="word" ?disabled=${at === plan.steps.length - 1} @click=${() => this.go(1)}>${lecture.later}</button>
          </span>
          <span class="words">
            <button class="word" aria-expanded=${this.sheetHere ? 'true' : nothing} @click=${this.showSheet}>${lecture.sheet}</button>
            <button class="word" @click=${() => this.leave()}>${lecture.leave}</button>
          </span>
        </footer>
      </main>
      <p class="unseen" role="status">${this.said}</p>
      ${this.sheetHere ? html`<aside aria-label=${lecture.sheetTitle}>${this.said ? html`<p class="said">${this.said}</p>` : nothing}${this.sheetOf(parts)}</aside>` : nothing}`
  }

  private body(parts: StepParts) {
    const { step, views, reader, book } = parts
    const entry = step.entry === null ? undefined : entryOf(book, step.entry)
    if (!entry) return nothing
    const view = views[entry.kind]
    const shown = parts.shownBy(entry.id)
    const { failure, cautions } = this.desk.flow.stateOf(entry.id)
    if (!view || !shown) {
      const known = this.desk.house.kinds.names.includes(entry.kind)
      const why = known ? reader.words.entry.fetching : reader.words.entry.unknownKind(entry.kind)
      if (heldBackBy(book, entry, this.desk.house.kinds.items))
        return html`<p class="said">${reader.words.entry.heldBack}</p>`
      return html`<p class="said">${failure ? failureSentence(failure, reader) : why}</p>`
    }
    const sentence = stepSentence(parts)
    const opening = sentence === stepFinding(parts) ? null : stepFinding(parts)
    const said = [opening, view.note(shown)].filter(Boolean).join(' ')
    const choices = view.choices?.(shown)
    return html`<div class="drawn ${sentence === stepQuestion(parts) ? 'asked' : ''}">${view.draw(shown)}</div>
      ${failure ? html`<p class="caution" role="status">${failureSentence(failure, reader)}</p>` : nothing}
      ${
        choices
          ? html`<div class="choices" role="group" aria-label=${choices.label}><span>${choices.label}</span>${choices.options.map(
              ({ label, chosen, settings }) => html`<button
                class="word"
                aria-pressed=${chosen ? 'true' : 'false'}
                @click=${() => announce(this, 'rearrange', { id: entry.id, settings })}
              >${label}</button>`,
            )}</div>`
          : nothing
      }
      ${
        cautions.length > 0
          ? html`<ul class="cautions">${cautions.map(caution => html`<li class="caution">${cautionSentence(caution, reader)}</li>`)}</ul>`
          : nothing
      }
      ${said ? html`<p class="said">${said}</p>` : nothing}
      ${view.handsOn ? html`<p class="caution">${reader.words.page.safetyText}</p>` : nothing}`
  }

  private sheetOf(parts: StepParts): TemplateResult {
    const { plan, at, reader } = this
    const { step, book } = parts
    const page = book.pages[step.page]
    const entry = step.entry === null ? undefined : entryOf(book, step.entry)
    const next = plan.steps[at + 1]
    const asked = this.askedAfter()
    const notes = [step.opens ? page?.notes : undefined, entry?.notes].filter(Boolean).join('\n\n')
    return teacherSheet(
      {
        where: reader.words.lecture.step({
          book: book.title,
          number: String(at + 1),
          total: String(plan.steps.length),
        }),
        sentence: stepSentence(parts),
        notes,
        next: next ? stepSentence(this.parts(next)) : null,
        question: asked ? this.questionOf(asked) : null,
        plan: { minutes: plan.minutes, after: step.minutesAfter, left: this.clock.left(plan.minutes) },
      },
      { reader, acts: { turn: this.go, begin: this.clock.begin } },
    )
  }

  private askedAfter(): Step | undefined {
    const book = bookOf(this.desk.session())
    return this.plan.steps
      .slice(this.at + 1)
      .find(later => later.entry !== null && entryOf(book, later.entry)?.kind === 'question')
  }

  /** What the room is asked; by its title until its values are known. */
  private questionOf(step: Step): string {
    const parts = this.parts(step)
    return stepQuestion(parts) ?? stepTitle(parts)
  }

  private readonly showSheet = (): void => {
    if (this.sheetHere) {
      this.sheetHere = false
      return
    }
    const { lecture } = this.reader.words
    this.sheet ??= openSheetWindow({
      title: lecture.sheetTitle,
      language: this.reader.locale,
      styles: `${sheetPaper}${teacherSheetStyles}`,
    })
    if (!this.sheet?.isOpen()) {
      this.sheet = null
      this.said = lecture.blocked
      this.sheetHere = true
      return
    }
    this.said = ''
    this.unlistenSheet = listenPageKeys(this.sheet.window, { turn: this.go, leave: () => this.closeSheet() })
    this.drawSheet()
  }

  private drawSheet(): void {
    const step = this.plan.steps[this.at]
    if (step && this.sheet?.isOpen()) this.sheet.draw(this.sheetOf(this.parts(step)))
  }

  private closeSheet(): void {
    this.unlistenSheet()
    this.sheet?.close()
    this.sheet = null
  }
}

customElements.define('lecture-view', LectureView)
