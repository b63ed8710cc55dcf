import { displayUnit } from '@swardsink/model'
import type { Reader } from '../../words/index.ts'
import type { Shown, Table } from '../view.ts'
import type { Checked, CheckResult, CheckSettings } from './kind.ts'

export type ShownCheck = Shown<CheckSettings, CheckResult>

export function stripName({ set, roller }: Pick<Checked, 'set' | 'roller'>, { words }: Reader): string {
  const { check } = words
  return check.strip({ set, roller: roller ?? '' }) || check.unnamed
}

export function verdictWords(strip: Checked, whole: boolean, { words, format }: Reader): string {
  const { verdicts } = words.check
  const { verdict, why, outside } = strip
  if (why) return verdicts[why]
  if (verdict === null) return whole ? verdicts['not known'] : verdicts.working
  return verdict === 'agrees' ? verdicts.agrees : verdicts[verdict](format(outside, 'height'))
}

export type StripCells = Readonly<Record<'count' | 'measured' | 'between' | 'difference' | 'verdict', string>>

export function cellsOf(strip: Checked, whole: boolean, reader: Reader): StripCells {
  const { format, words } = reader
  const { measured, expected, between, count } = strip
  const bare = (height: number) => format(height, 'height', { unit: false })
  const { table, verdicts } = words.check
  const none = whole || strip.why ? verdicts['not known'] : verdicts.working
  return {
    count: String(count),
    measured: bare(measured),
    between: between ? table.to({ low: bare(between[0]), high: bare(between[1]) }) : none,
    difference:
      expected === null
        ? verdicts['not known']
        : format(measured - expected, 'height', { unit: false, signed: true }),
    verdict: verdictWords(strip, whole, reader),
  }
}

export function checkTable({ result, reader }: ShownCheck): Table {
  const said = reader.words.check.table
  const unit = displayUnit('height', reader.units)
  return {
    caption: said.caption,
    columns: [
      { head: said.strip, unit: '' },
      { head: said.count, unit: '' },
      { head: said.measured, unit },
      { head: said.between, unit },
      { head: said.difference, unit },
      { head: said.verdict, unit: '' },
    ],
    rows: result.strips.map(strip => {
      const { count, measured, between, difference, verdict } = cellsOf(strip, result.whole, reader)
      return [stripName(strip, reader), count, measured, between, difference, verdict]
    }),
  }
}

/** How many agree, and which lies furthest outside. */
export function checkFinding({ result, reader }: ShownCheck): string | null {
  const { found } = reader.words.check
  const { strips, whole } = result
  if (strips.length === 0) return null
  const judged = strips.filter(({ verdict }) => verdict !== null)
  const [furthest] = judged.toSorted((a, b) => b.outside - a.outside)
  if (!furthest) return whole ? found.unknown : found.working
  const agree = judged.filter(({ verdict }) => verdict === 'agrees').length
  const one = sentenceOn(furthest, reader)
  if (judged.length === 1) return one
  return agree === judged.length ? found.all(agree) : found.some({ worst: one }, agree, judged.length)
}

function sentenceOn(strip: Checked, reader: Reader): string {
  const { one } = reader.words.check.found
  const { format } = reader
  const { verdict, between, expected, measured, outside } = strip
  const name = stripName(strip, reader)
  if (!verdict || !between || expected === null) return ''
  if (verdict === 'agrees')
    return one.agrees({
      strip: name,
      measured: format(measured, 'height'),
      low: format(between[0], 'height', { unit: false }),
      high: format(between[1], 'height'),
    })
  return one[verdict]({
    strip: name,
    by: format(Math.abs(measured - expected), 'height'),
    outside: format(outside, 'height'),
  })
}
