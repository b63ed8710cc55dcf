import type { MapQuantity, UnitSystem } from '@swardsink/model'
import type { SinkageMapWords } from '../../../../packages/explorer/src/figures/mapWords.ts'
import type { SideViewWords } from '../../../../packages/explorer/src/figures/sideWords.ts'

export const sideWords: SideViewWords = {
  title: 'The unit from the side',
  frontRoller: 'front roller',
  rearRoller: 'rear roller',
  cuttingCylinder: 'cutting cylinder',
  bottomBlade: 'bottom blade',
  edgeLine: ['line of the', 'cutting edge'],
  turf: 'turf',
  bench: 'bench',
  effective: 'effective',
  drop: value => `${value} drop`,
  body: load => `body ${load}`,
  load: (name, load) => `${name} ${load}`,
  heightBar: (length, exaggeration) => (exaggeration === 1 ? length : `${length}, ×${exaggeration}`),
  handle: { edge: 'cutting edge', front: 'front axis', rear: 'rear axis', body: 'body' },
}

const quantityWords = {
  sinkage: 'sinkage',
  drop: 'drop',
  effectiveHeight: 'effective height',
  peakPressure: 'peak pressure',
}

export const mapWords = (units: UnitSystem, quantity: MapQuantity, unit: string): SinkageMapWords => ({
  title: `Map of ${quantityWords[quantity]}`,
  massAxis: `mass of front roller, ${units === 'US' ? 'lb' : 'kg'}`,
  softnessAxis: units === 'US' ? 'softness of turf, in at 10 kPa' : 'softness of turf, mm at 10 kPa',
  firm: 'firm',
  soft: 'soft',
  contourUnit: unit,
  here: value => `${value} here`,
  noAnswer: 'bottoms out here',
  markName: 'the present case',
  markText: ({ mass, softness, value }) => `${mass}, ${softness}: ${value ?? 'no answer'}`,
})
