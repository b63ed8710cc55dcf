import { GRAVITY, type Scenario, type SettledUnit } from '@swardsink/model'
import { presentTurf, scalesOf } from '../../book/index.ts'
import type { Reader } from '../../words/index.ts'
import { settledInput, settledOf, settleOnce } from '../settled.ts'

type Said = { readonly scenario: Scenario; readonly reader: Reader }

function frontRoller({ front }: SettledUnit, { scenario, reader: { words, format } }: Said): string {
  const { surface } = scenario.unit.frontRoller
  if (surface.kind === 'smooth') return words.setting.smooth(format(front.peakPressure, 'pressure'))
  const lands = words.percent(surface.land / surface.pitch)
  const bears = words.percent(front.bearingFraction)
  if (front.grooveFloor === 'touching') return words.setting.full({ lands, bears })
  return words.setting.grooved({ lands, bears, relief: format(front.relief, 'relief') })
}

function turf({ front }: SettledUnit, { scenario, reader: { words, format } }: Said): string {
  const { law } = presentTurf(scenario)
  const sinkage = format(front.sinkage, 'sinkage')
  if (!('lockingDepth' in law)) return words.setting.notLocking(sinkage)
  const share = words.percent(front.sinkage / law.lockingDepth)
  return words.setting.locking({ sinkage, share, lockingDepth: format(law.lockingDepth, 'lockingDepth') })
}

function weighed({ front }: SettledUnit, { scenario, reader: { words, format } }: Said): string {
  const total = scalesOf(scenario.unit).total * GRAVITY
  return words.setting.weighed({
    front: format(front.load, 'load'),
    total: format(total, 'load'),
    share: words.percent(front.load / total),
  })
}

/** The cut as it is, beside what it would be standing instead of mowing, or the other way round. */
function condition(settled: SettledUnit, { scenario, reader: { words, format } }: Said): string | null {
  const walkingPace = 1.2
  const standing = scenario.condition.kind === 'standing'
  const other = settleOnce({
    ...settledInput(scenario),
    condition: standing ? { kind: 'mowing', speed: walkingPace } : { kind: 'standing' },
  })
  if (other.outcome !== 'settled') return null
  const now = format(settled.effectiveHeight.middle, 'height')
  const then = format(other.effectiveHeight.middle, 'height')
  return standing ? words.setting.standing({ now, other: then }) : words.setting.mowing({ now, other: then })
}

/** What a group of settings is about: what its first setting belongs to. */
export function subjectOf(names: readonly string[]): string {
  return (names[0] ?? '').split('.')[0] ?? ''
}

/** One sentence about what these settings come to. */
export function settingFinding(names: readonly string[], said: Said): string | null {
  const settled = settledOf(said.scenario)
  if (settled.outcome !== 'settled') return null
  switch (subjectOf(names)) {
    case 'frontRoller':
      return frontRoller(settled, said)
    case 'turf':
      return turf(settled, said)
    case 'unit':
    case 'scales':
      return weighed(settled, said)
    case 'condition':
      return condition(settled, said)
    default:
      return null
  }
}
