import type { TemplateResult } from 'lit'
import type { PredictionSpec } from '../../../../packages/explorer/src/figures/predictionLayout.ts'
import { predictionRow, predictionScale } from '../../../../packages/explorer/src/figures/predictionScale.ts'
import { questionFigure } from '../../../../packages/explorer/src/words/english/question.ts'
import type { Framing } from './gallery.ts'

const mm = 1e-3
const usual: PredictionSpec = {
  told: { quantity: 'sinkage' },
  what: 'sinkage of the front roller',
  domain: [0, 2 * mm],
  deep: true,
  now: 0.77 * mm,
  yours: 1.24 * mm,
  model: null,
  settled: 1,
  guesses: [],
  roller: { diameter: 0.057, at: 'front' },
  error: '',
  text: value => (value / mm).toFixed(2),
  movable: true,
  spoken: '1.24 mm',
}
const revealed = { model: 0.98 * mm, error: '+0.26', movable: false } as const
const room = [0.4, 0.5, 0.5, 0.55, 0.7, 0.7, 0.7, 0.72, 0.9, 1, 1, 1, 1.1, 1.2, 1.5, 1.9].map(v => v * mm)
const load = {
  told: { quantity: 'load' },
  what: 'load on the front roller',
  roller: null,
  deep: false,
} as const

export const predictionSpecs: Record<string, PredictionSpec> = {
  asked: { ...usual, yours: null },
  said: usual,
  locked: { ...usual, movable: false },
  revealed: { ...usual, ...revealed },
  'on its way': { ...usual, ...revealed, settled: 0.4 },
  'nothing stands': { ...usual, now: null, yours: 1.8 * mm },
  'nearly right': { ...usual, ...revealed, yours: 0.99 * mm, error: '+0.01' },
  'a room': { ...usual, guesses: room, yours: null, movable: false },
  'a room, revealed': { ...usual, ...revealed, guesses: room },
  'sixty alike': { ...usual, guesses: new Array<number>(60).fill(0.9 * mm) },
  load: {
    ...usual,
    ...load,
    ...revealed,
    domain: [0, 300],
    now: 148,
    yours: 230,
    model: 178,
    error: '+52',
    text: value => value.toFixed(0),
  },
  'a change': {
    ...usual,
    ...load,
    ...revealed,
    what: 'how much it changes',
    told: { quantity: 'drop' },
    deep: true,
    domain: [-1 * mm, 1 * mm],
    now: null,
    yours: -0.4 * mm,
    model: 0.2 * mm,
    error: '−0.60',
  },
  times: {
    ...usual,
    ...load,
    ...revealed,
    told: { unit: '' },
    domain: [0, 3],
    now: null,
    yours: 2,
    model: 1.27,
    error: '+0.73',
    text: value => String(value),
  },
  'hardly any depth': { ...usual, domain: [0, 0.01 * mm], now: 0.001 * mm, yours: 0.008 * mm },
  deep: { ...usual, domain: [0, 30 * mm], now: 14 * mm, yours: 22 * mm },
}

export const predictionFigures = (framing: Framing): Record<string, TemplateResult> => ({
  ...Object.fromEntries(
    Object.entries(predictionSpecs).map(([name, spec]) => [
      name,
      predictionScale(spec, framing(questionFigure)),
    ]),
  ),
  row: predictionRow({ guesses: 7, most: 12, yours: true, model: true, name: 'an option' }, framing(null)),
})
