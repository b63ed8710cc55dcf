import { css, html, LitElement } from 'lit'
import { sharedStyles } from '../look/index.ts'

/** Held this long it begins to repeat, ms; then every so often; after so many repeats it takes ten at a time. */
const HELD = 400
const EVERY = 90
const FASTER_AFTER = 20

/** What a press asks for: so many printed digits, up or down. */
export type StepAsked = { readonly digits: number }

/** A large plus or minus that repeats while it is held: for a gloved finger, which cannot hold a thumb on a line. */
export class StepWord extends LitElement {
  static override properties = { by: { type: Number }, label: {} }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
      }
      button {
        width: 60px;
        height: 60px;
        border: 0;
        border-bottom: 1.5px solid var(--ink-3);
        border-radius: var(--corner) var(--corner) 0 0;
        background: var(--field);
        color: var(--ink);
        font: inherit;
        font-size: 1.5rem;
        line-height: 1;
        cursor: pointer;
        touch-action: manipulation;
        user-select: none;
        -webkit-user-select: none;
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ]

  /** 1 or −1. */
  declare by: number
  declare label: string
  private timer: ReturnType<typeof setTimeout> | undefined
  /** The press that is just ending has stepped already: the click after it is the same press. */
  private stepped = false

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    clearTimeout(this.timer)
  }

  override render() {
    return html`<button
      aria-label=${this.label}
      @pointerdown=${this.pressed}
      @pointerup=${this.released}
      @pointercancel=${this.released}
      @pointerleave=${this.released}
      @contextmenu=${(event: Event) => event.preventDefault()}
      @click=${this.clicked}
    >${this.by > 0 ? '+' : '\u2212'}</button>`
  }

  private step(digits: number): void {
    const detail: StepAsked = { digits: this.by * digits }
    this.dispatchEvent(new CustomEvent('sward-step', { detail }))
  }

  private pressed(event: PointerEvent): void {
    if (event.button !== 0) return
    this.stepped = true
    this.step(1)
    let repeats = 0
    const repeat = (): void => {
      repeats++
      this.step(repeats > FASTER_AFTER ? 10 : 1)
      this.timer = setTimeout(repeat, EVERY)
    }
    this.timer = setTimeout(repeat, HELD)
  }

  private released(): void {
    clearTimeout(this.timer)
    if (this.stepped) this.dispatchEvent(new CustomEvent('sward-let-go'))
  }

  /** A key, or a reader’s software, clicks without a pointer. */
  private clicked(): void {
    if (!this.stepped) {
      this.step(1)
      this.dispatchEvent(new CustomEvent('sward-let-go'))
    }
    this.stepped = false
  }
}

customElements.define('step-word', StepWord)
