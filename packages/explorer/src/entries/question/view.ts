import { html } from 'lit'
import { predictionLayout } from '../../figures/index.ts'
import type { Shown, Table, View } from '../view.ts'
import { askedOf } from './asked.ts'
import { frameOf, specOf } from './drawing.ts'
import { questionFinding } from './finding.ts'
import type { QuestionResult } from './kind.ts'
import './question-entry.ts'
import { bare, signed, unitOf } from './saying.ts'
import type { QuestionSettings } from './settings.ts'

type ShownQuestion = Shown<QuestionSettings, QuestionResult>

/** The widest the scale is drawn: the note speaks of that. */
const USUAL_WIDTH = 560

function note(shown: ShownQuestion): string | null {
  const { settings, result, reader } = shown
  const { question, sideView } = reader.words
  if (settings.options.length > 0) return sideView.invented
  const said = result.roller
    ? question.note.roller(String(predictionLayout(specOf(shown, 1), frameOf(reader, USUAL_WIDTH)).times))
    : question.note.other
  return `${said} ${sideView.invented}`
}

function table({ settings, result, reader }: ShownQuestion): Table {
  const said = reader.words.question.table
  const { prediction, guesses, options, state } = settings
  const { told, answer, now, right } = result
  const revealed = state === 'revealed'
  const has = options.length > 0
  const text = (value: number) => (has ? (options[value]?.text ?? '') : bare(value, told, reader))
  const model = has ? right : answer
  const error = (value: number) =>
    !has && revealed && answer !== null ? signed(value - answer, told, reader, false) : ''
  const row = (who: string, value: number) => [who, text(value), error(value)]
  const rows = [
    ...(prediction === null ? [] : [row(said.you, prediction)]),
    ...guesses.map(guess => row(said.room, guess)),
    ...(now === null || has ? [] : [[said.now, bare(now, told, reader), '']]),
    [said.model, revealed ? (model === null ? reader.words.text.unknown : text(model)) : said.hidden, ''],
  ]
  const unit = has ? '' : unitOf(told, reader)
  return {
    caption: said.caption,
    columns: [
      { head: said.who, unit: '' },
      { head: has ? said.says : said.value, unit },
      { head: said.error, unit },
    ],
    rows,
  }
}

/** A question to be answered before the figure answers. */
export const questionView: View<'question', QuestionSettings, QuestionResult> = {
  kind: 'question',
  title: ({ reader }) => reader.words.question.title,
  finding: questionFinding,
  saysFinding: true,
  note,
  table,
  asked: askedOf,
  draw: shown => html`<question-entry .shown=${shown}></question-entry>`,
  edit(editing) {
    void import('./question-editor.ts')
    return html`<question-editor .editing=${editing}></question-editor>`
  },
}
