import fc from 'fast-check'
import { packScenario, readAddress, readLink, writeAddress } from '../../packages/explorer/src/book/index.ts'
import { scenarios } from '../support/arbitraries.ts'
import { tears, torn } from './damage.ts'
import { door } from './door.ts'
import { must, mustBeSaid, mustBeSame } from './expectations.ts'
import { askEverything } from './scenarioDoor.ts'

const letters = fc.oneof(
  fc.string({ maxLength: 60 }),
  fc.base64String({ maxLength: 200 }).map(text => `~${text}`),
  fc.jsonValue().map(value => btoa(unescape(encodeURIComponent(JSON.stringify(value))))),
)

/** Addresses after #: links that were sound, links that were never one, and books and pages by name. */
export const linkDoor = door({
  name: 'links',
  arbitrary: fc.record({
    scenario: scenarios,
    letters: fc.option(letters, { nil: undefined, freq: 2 }),
    damage: fc.oneof({ weight: 1, arbitrary: fc.constant([]) }, { weight: 2, arbitrary: tears }),
    book: fc.string({ unit: 'grapheme', maxLength: 12 }),
    page: fc.integer({ min: 1, max: 9999 }),
    before: fc.constantFrom(
      '',
      'book=x&',
      'page=0&',
      'page=99999999999&',
      '&&',
      '%E0%A4%A&',
      'view=lecture&',
    ),
  }),
  async check({ scenario, letters: other, damage, book, page, before }) {
    const packed = other ?? (await packScenario(scenario))
    const read = await readLink(`#${before}${torn(`scenario=${packed}`, damage)}`)
    if (read.kind === 'damaged') mustBeSaid(read.problems, 'a link')
    if (read.kind === 'scenario') {
      const again = await readLink(`#scenario=${await packScenario(read.scenario)}`)
      must(again.kind === 'scenario', 'a link that was read cannot be written')
      mustBeSame(again.scenario, read.scenario, 'a link written and read')
      askEverything(read.scenario)
    }
    const address = readAddress(writeAddress({ book, page }))
    if (book !== '') must(address.book === book, 'an address forgets its book')
    must((address.page ?? 1) === page, 'an address forgets its page')
  },
})
