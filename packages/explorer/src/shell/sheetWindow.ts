import { render, type TemplateResult } from 'lit'
import { tokenText } from '../look/index.ts'

/** A window of its own for what the teacher sees and the room does not. */
export type SheetWindow = {
  readonly window: Window
  isOpen(): boolean
  draw(template: TemplateResult): void
  close(): void
}

const NAME = 'swardsink-teacher'

/**
 * Opens it, or says by null that this browser does not let it. The window has no page of its own: it is drawn from
 * here, which works from a file on disk as well, where two pages could not talk to each other.
 */
export function openSheetWindow(q: {
  readonly title: string
  readonly language: string
  readonly styles: string
}): SheetWindow | null {
  const opened = window.open('', NAME, 'popup,width=560,height=720')
  if (!opened) return null
  const { document } = opened as Window & typeof globalThis
  document.title = q.title
  document.documentElement.lang = q.language
  // A style sheet belongs to the document it was made in.
  const sheet = new (opened as Window & typeof globalThis).CSSStyleSheet()
  sheet.replaceSync(`${tokenText}\n${q.styles}`)
  document.adoptedStyleSheets = [sheet]
  const root = document.createElement('div')
  document.body.replaceChildren(root)
  opened.focus()
  return {
    window: opened,
    isOpen: () => !opened.closed,
    draw: template => {
      if (!opened.closed) render(template, root, { creationScope: document })
    },
    close: () => opened.close(),
  }
}
