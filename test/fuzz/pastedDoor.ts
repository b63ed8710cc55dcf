import { catalogue, displayUnit, formatQuantity, type QuantityName, unitWords } from '@swardsink/model'
import fc from 'fast-check'
import { filledRows, pastedCells } from '../../packages/explorer/src/controls/pastedRows.ts'
import { isUnfinished, readTyped } from '../../packages/explorer/src/controls/readTyped.ts'
import { namesIn, paragraphsOf } from '../../packages/explorer/src/entries/text/prose.ts'
import { tears, torn } from './damage.ts'
import { door } from './door.ts'
import { must } from './expectations.ts'

const quantities = Object.keys(catalogue) as QuantityName[]

const typed = fc
  .tuple(
    fc.oneof(
      fc.double({ noNaN: true, min: -1e6, max: 1e6 }).map(String),
      fc.tuple(fc.nat(99), fc.nat(99), fc.nat(99)).map(([whole, a, b]) => `${whole} ${a}/${b}`),
      fc.constantFrom(
        '1e400',
        '9'.repeat(400),
        '1/0',
        '--1',
        '1,2,3',
        '٣',
        '½',
        '',
        '-',
        '0x1f',
        '1e5',
        '−4,5',
      ),
      fc.string({ unit: 'grapheme', maxLength: 12 }),
    ),
    fc.constantFrom('', ' ', '\u202f'),
    fc.constantFrom('', 'mm', 'in', '"', 'kg', 'lb', 'N', 'kPa', '%', '°', 'zz', 'mm/s', 'constructor'),
  )
  .map(parts => parts.join(''))

/** Text that is pasted or typed: into a number field, a table, a page of prose. */
export const pastedDoor = door({
  name: 'pasted and typed text',
  arbitrary: fc.record({
    typed,
    quantity: fc.constantFrom(...quantities),
    units: fc.constantFrom('metric' as const, 'US' as const),
    cells: fc.array(
      fc.array(fc.oneof(typed, fc.constantFrom('set', 'load_N', '"', 'a"b', 'x;y')), { maxLength: 5 }),
      {
        maxLength: 8,
      },
    ),
    separator: fc.constantFrom('\t', ';', ',', '\n'),
    damage: tears,
    at: fc.record({ row: fc.nat(20), column: fc.nat(6) }),
    rows: fc.array(fc.array(fc.string({ maxLength: 3 }), { maxLength: 4 }), { maxLength: 6 }),
    prose: fc.oneof(
      fc.string({ unit: 'binary', maxLength: 200 }),
      fc
        .array(fc.constantFrom('{', '}', '{front.load}', 'drop', '\n\n', '*', ' ', '<b>', '$'), {
          maxLength: 60,
        })
        .map(parts => parts.join('')),
    ),
  }),
  check({ typed: text, quantity, units, cells, separator, damage, at, rows, prose }) {
    const value = readTyped(text, { quantity, units })
    must(typeof isUnfinished(text, { quantity, units }) === 'boolean', 'neither finished nor not')
    must(value === null || Number.isFinite(value), `${text} is read as ${value}`)
    if (value !== null)
      must(!/NaN|undefined/.test(formatQuantity(value, quantity, { units })), `${text} is shown as no number`)
    must(unitWords(quantity).length > 0 || displayUnit(quantity, units) === '', `no unit of ${quantity}`)

    const pasted = torn(cells.map(row => row.join(separator)).join('\n'), damage)
    const found = pastedCells(pasted)
    if (found) {
      const columns = [['set'], ['load', 'load_N'], ['note']]
      const filled = filledRows(rows, { at, cells: found, columns })
      const texts = found.flat().filter(cell => cell !== '').length
      const kept = filled.rows.flat().filter(cell => cell !== '').length
      must(filled.rows.length >= rows.length, 'rows are lost by pasting')
      must(
        kept + filled.left <= texts + rows.flat().filter(cell => cell !== '').length,
        'cells out of nothing',
      )
    }
    must(Array.isArray(namesIn(prose)), 'no names')
    const pieces = paragraphsOf(prose).flat()
    must(
      pieces.every(piece => typeof piece === 'object'),
      'no pieces',
    )
  },
})
