import type { Roller } from '@swardsink/model'
import type { TemplateResult } from 'lit'
import { faceStrip, stripHeight } from '../../../../packages/explorer/src/figures/faceStrip.ts'
import { weighedUnit } from '../../../../packages/explorer/src/figures/weighedUnit.ts'
import type { Framing } from './gallery.ts'
import { grooved, smooth, units } from './units.ts'

const words = { title: 'The unit on its scales', front: 'front', rear: 'rear', edge: 'edge', scale: '' }

function onScales(name: string, framing: Framing): TemplateResult {
  const { unit } = units[name] as (typeof units)[string]
  const frame = framing({ ...words, body: '' })
  const body = `body ${frame.format(unit.body.mass, 'mass')}`
  const loads = (unit.loads ?? []).map(load => ({ name: load.name, at: load.at }))
  return weighedUnit(
    {
      wheelbase: unit.wheelbase,
      edge: unit.edge,
      front: unit.frontRoller.diameter,
      rear: unit.rearRoller.diameter,
      at: unit.body.at,
      loads,
      readings: name === 'usual' ? { front: 14.2, rear: 15.4 } : { front: null, rear: null },
    },
    { ...frame, words: { ...words, body } },
  )
}

const rollers: Readonly<Record<string, Roller>> = {
  smooth: smooth(57),
  grooved: grooved(57),
  'built up': { ...grooved(57), buildUp: 0.6e-3 },
  discs: { ...smooth(57), surface: { kind: 'grooved', pitch: 30e-3, land: 8e-3, depth: 12e-3 } },
}

/** Units on their scales, from the usual one to those at the ends, and faces of rollers. */
export const scenarioFigures = (framing: Framing): Record<string, TemplateResult> => ({
  ...Object.fromEntries(Object.keys(units).map(name => [`${name}, on scales`, onScales(name, framing)])),
  ...Object.fromEntries(
    Object.entries(rollers).map(([name, { surface, buildUp = 0 }]) => [
      `face, ${name}`,
      faceStrip({ surface, buildUp }, { width: 192, height: stripHeight(12e-3), name }),
    ]),
  ),
})
