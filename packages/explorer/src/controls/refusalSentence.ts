import { sentence } from '@swardsink/model'
import type { Refusal } from '../book/index.ts'
import type { Reader } from '../words/index.ts'

/** The sentence beside a field that could not be taken. */
export function refusalSentence(refusal: Refusal, { words, format }: Reader): string {
  const { refusals, failures } = words
  switch (refusal.reason) {
    case 'not a number':
      return refusals.notANumber(refusal.text)
    case 'whole number':
      return refusals.wholeNumber
    case 'a share':
      return refusals.aShare
    case 'groove deeper than the roller':
      return refusals.grooveTooDeep({
        depth: format(refusal.depth, 'grooveDepth'),
        diameter: format(refusal.diameter, 'diameter'),
      })
    case 'lasting against rebound':
      return refusals.lastingAgainstRebound({
        lasting: format(refusal.lasting, 'ratio'),
        rebound: format(refusal.rebound, 'ratio'),
      })
    case 'rollers touch':
      return refusals.rollersTouch({
        front: format(refusal.front, 'diameter'),
        rear: format(refusal.rear, 'diameter'),
        wheelbase: format(refusal.wheelbase, 'wheelbase'),
      })
    case 'more than zero':
      return refusals.moreThanZero
    case 'not negative':
      return refusals.notNegative
    case 'land against pitch':
      return refusals.landAgainstPitch({
        land: format(refusal.land, 'land'),
        pitch: format(refusal.pitch, 'pitch'),
      })
    case 'locking depth against softness':
      return refusals.lockingAgainstSoftness({
        lockingDepth: format(refusal.lockingDepth, 'lockingDepth'),
        softness: format(refusal.softness, 'softness'),
      })
    case 'edge outside the wheelbase':
      return refusals.edgeOutside({
        edge: format(refusal.edge, 'wheelbase'),
        wheelbase: format(refusal.wheelbase, 'wheelbase'),
      })
    case 'roller heavier than its reading':
      return refusals.rollerTooHeavy({
        where: failures.places[refusal.where] ?? refusal.where,
        reading: format(refusal.reading, 'mass'),
        roller: format(refusal.roller, 'mass'),
      })
    case 'model':
      return words.modelSays(sentence(refusal.problem))
  }
}
