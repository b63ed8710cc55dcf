import { html, nothing, type TemplateResult } from 'lit'
import type { Reader } from '../words/index.ts'

/** What the teacher is told of the step that is shown. */
export type TeacherSheet = {
  readonly where: string
  readonly sentence: string
  readonly notes: string
  /** What the next step says; null on the last one. */
  readonly next: string | null
  /** The next thing the room is asked; null when nothing more is. */
  readonly question: string | null
  readonly plan: { readonly minutes: number; readonly after: number; readonly left: number | null }
}

export type SheetActs = { readonly turn: (by: 1 | -1) => void; readonly begin: () => void }

/** Notes, what comes next, and the minutes left: drawn in a window of its own, or under the slide. */
export function teacherSheet(
  { where, sentence, notes, next, question, plan }: TeacherSheet,
  { reader, acts }: { readonly reader: Reader; readonly acts: SheetActs },
): TemplateResult {
  const { lecture } = reader.words
  return html`<section class="sheet" aria-labelledby="sheet-title">
    <p class="where" id="sheet-title">${lecture.sheetTitle}: ${where}</p>
    <p class="now">${sentence}</p>
    <p class="time">${timeWords(plan, reader)}</p>
    <p class="words">
      <button class="word" @click=${() => acts.turn(-1)}>${lecture.earlier}</button>
      <button class="word" @click=${() => acts.turn(1)}>${lecture.later}</button>
      ${
        plan.minutes > 0
          ? html`<button class="word" @click=${acts.begin}>${plan.left === null ? lecture.begin : lecture.beginAgain}</button>`
          : nothing
      }
    </p>
    <h2>${lecture.notes}</h2>
    ${notes === '' ? html`<p class="none">${lecture.noNotes}</p>` : notes.split(/\n\s*\n/).map(text => html`<p>${text}</p>`)}
    <h2>${lecture.next}</h2>
    <p>${next ?? lecture.last}</p>
    ${question === null ? nothing : html`<h2>${lecture.nextQuestion}</h2><p>${question}</p>`}
    <p class="quiet">${lecture.keys}</p>
  </section>`
}

function timeWords({ minutes, after, left }: TeacherSheet['plan'], { words }: Reader): string {
  const { lecture } = words
  if (minutes === 0) return lecture.noPlan
  return left === null ? lecture.planned({ minutes, after }) : lecture.left({ minutes: left, after })
}

/** For the window, which has no other styles, and under the slide. */
export const teacherSheetStyles = `
  .sheet {
    max-width: 38.5rem;
    font-size: 1.0625rem;
    line-height: 1.5;
  }
  .sheet h2 {
    font-size: 1rem;
    font-weight: 600;
    line-height: 1.3;
    margin: 1.25rem 0 0.25rem;
  }
  .sheet p {
    margin: 0 0 0.5rem;
    white-space: pre-line;
  }
  .sheet .now {
    font-size: 1.375rem;
    line-height: 1.35;
  }
  .sheet .time {
    font-weight: 600;
  }
  .sheet .where,
  .sheet .none,
  .sheet .quiet {
    color: var(--ink-2);
    font-size: 0.9375rem;
  }
  .sheet .quiet {
    margin-top: 1.25rem;
  }
  .sheet .words {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.5rem;
  }
  .sheet button {
    font: inherit;
    color: inherit;
    background: none;
    border: 0;
    padding: 0;
    min-height: max(28px, var(--target));
    min-width: var(--target);
    text-decoration: underline 1px var(--ink-3);
    text-underline-offset: 0.35em;
    cursor: pointer;
  }
  .sheet button:focus-visible {
    outline: 2px solid var(--ink);
    outline-offset: 2px;
  }
`

/** The window's own paper. */
export const sheetPaper = `
  html {
    background: var(--paper);
    color: var(--ink);
    font-family: var(--face);
    font-variant-numeric: lining-nums tabular-nums;
  }
  body {
    margin: 1.5rem;
  }
`
