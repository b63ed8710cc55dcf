import { type Scenario, sentence } from '@swardsink/model'
import type { Reader } from '../../words/index.ts'
import type { Shown } from '../view.ts'
import type { UnitFromScalesResult, UnitFromScalesSettings } from './kind.ts'
import type { Contradiction } from './weigh.ts'

export function contradictionSentence(why: Contradiction, { words, format }: Reader): string {
  const said = words.unitFromScales
  if (why.reason === 'model') return words.modelSays(sentence(why.problem))
  if (why.reason === 'roller heavier')
    return words.refusals.rollerTooHeavy({
      where: words.failures.places[why.where] ?? why.where,
      reading: format(why.reading, 'mass'),
      roller: format(why.roller, 'mass'),
    })
  const values = {
    parts: format(why.parts, 'mass'),
    whole: format(why.whole, 'mass'),
    difference: format(Math.abs(why.parts - why.whole), 'mass'),
  }
  return why.reason === 'three disagree' ? said.threeDisagree(values) : said.sidesDisagree(values)
}

function bodySentence({ unit }: Scenario, total: number, { words, format }: Reader): string {
  return words.unitFromScales.dimensions({
    body: format(unit.body.mass, 'mass'),
    at: format(unit.body.at, 'place'),
    total: format(total, 'mass'),
  })
}

/** What the readings come to, or why they come to nothing. */
export function scalesFinding(shown: Shown<UnitFromScalesSettings, UnitFromScalesResult>): string {
  const { result, settings, reader, scenario } = shown
  const { words, format } = reader
  const said = words.unitFromScales
  const { weighed, reads, fullBox } = result
  if (settings.from === 'dimensions') return bodySentence(scenario, reads.total, reader)
  if (weighed.state === 'too few') return said.tooFew
  if (weighed.state === 'contradiction') return said.contradicts
  const { body, frontRoller, rearRoller, wheelbase } = weighed.unit
  const rear = (body.mass * body.at) / wheelbase
  const own = { front: body.mass - rear + frontRoller.mass, rear: rear + rearRoller.mass }
  const found = said.weighed({
    total: format(own.front + own.rear, 'mass'),
    front: format(own.front, 'mass'),
    rear: format(own.rear, 'mass'),
    body: format(body.mass, 'mass'),
    at: format(body.at, 'place'),
  })
  if (!fullBox) return found
  const signed = { signed: true }
  const box = said.fullBox({
    front: format(fullBox.front, 'mass', signed),
    rear: format(fullBox.rear, 'mass', signed),
  })
  return `${found} ${box}`
}
