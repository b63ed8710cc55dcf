import { css, html, LitElement, nothing, type TemplateResult } from 'lit'
import { writeAddress } from '../book/index.ts'
import { wordStyles } from '../controls/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import type { Notice } from './notices.ts'
import { announceReader } from './readerEvents.ts'

/** What a reader is told above the page: each one sentence, and a word or two to act on it. */
export class NoticeList extends LitElement {
  static override properties = { notices: { attribute: false }, reader: { attribute: false } }
  static override styles = [
    sharedStyles,
    wordStyles,
    css`
      :host {
        display: block;
      }
      .notice {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--s-4);
        align-items: baseline;
        margin-top: var(--s-3);
        font-size: var(--t-note);
        line-height: 1.45;
        border-left: 3px solid var(--ink-3);
        padding-left: var(--s-3);
      }
      .notice.caution {
        border-left-color: var(--caution);
      }
      .notice p {
        overflow-wrap: anywhere;
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ]

  declare notices: readonly Notice[]
  declare reader: Reader

  override render() {
    return html`<div role="status">${this.notices.map(notice => this.notice(notice))}</div>`
  }

  private notice(notice: Notice) {
    const { files } = this.reader.words
    const grave = ['store full', 'newer file', 'nothing in it', 'borrowed', 'no such book', 'foreign address']
    return html`<div class="notice ${grave.includes(notice.kind) ? 'caution' : ''}">
      <p>${this.sentence(notice)}</p>
      ${this.action(notice)}
      <button class="word" @click=${() => announceReader(this, 'dismiss', { kind: notice.kind })}>${files.dismiss}</button>
    </div>`
  }

  private sentence(notice: Notice): string {
    const { files } = this.reader.words
    switch (notice.kind) {
      case 'other tab':
        return files.otherTab
      case 'kept apart':
        return files.keptApart(notice.name)
      case 'store full':
        return files.storeFull
      case 'newer file':
        return files.newer(String(notice.version))
      case 'nothing in it':
        return files.nothingInIt
      case 'borrowed':
        return notice.what === 'values' ? files.borrowedValues : files.borrowedPages
      case 'opened':
        return notice.sound ? files.opened(notice.title) : files.openedInPart(notice.title)
      case 'foreign address':
        return files.foreignAddress(notice.text)
      case 'no such book':
        return files.noSuchBook(notice.name)
      case 'earlier edition':
        return files.earlierEdition
      case 'linked':
        return files.linkedOver
    }
  }

  private action(notice: Notice): TemplateResult | typeof nothing {
    const { files, page } = this.reader.words
    const word = (words: string, act: () => void) =>
      html`<button class="word" @click=${act}>${words}</button>`
    const bookAt = (name: string, words: string) =>
      html`<a class="word" href=${writeAddress({ book: name, page: 1 })}>${words}</a>`
    switch (notice.kind) {
      case 'other tab':
      case 'kept apart':
        return word(files.openOther, () => announceReader(this, 'take-other'))
      case 'store full':
        return word(page.saveFile, () => announceReader(this, 'save'))
      case 'opened':
        return bookAt(notice.before, files.backTo(notice.beforeTitle))
      case 'earlier edition':
        return bookAt(notice.name, notice.title)
      default:
        return nothing
    }
  }
}

customElements.define('notice-list', NoticeList)
