import { type Caution, cautionWords, sentence } from '@swardsink/model'
import type { Reader } from './reader.ts'

/** A caution in the reader's language and units; one this table does not know yet is said in the model's own words. */
export function cautionSentence(caution: Caution, { words, format }: Reader): string {
  const say = words.cautions[caution.kind]
  if (!say) return words.modelSays(sentence(caution))
  const { quantity } = cautionWords[caution.kind]
  const shown = (value: number | undefined) => (value === undefined ? '' : format(value, quantity))
  const text = say({ value: shown(caution.value), limit: shown(caution.limit) })
  const where = caution.where && (words.places[caution.where] ?? caution.where)
  const said = where ? `${where}: ${text}` : text
  return said.charAt(0).toUpperCase() + said.slice(1)
}
