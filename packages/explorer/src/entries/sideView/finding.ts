import type { SettledUnit } from '@swardsink/model'
import type { Shown } from '../view.ts'
import type { SideViewSettings } from './kind.ts'

export function sideViewFinding({ result, scenario, reader }: Shown<SideViewSettings, SettledUnit>): string {
  const { words, format } = reader
  const lost = scenario.unit.benchHeight - result.effectiveHeight.middle
  return lost >= 0 ? words.sideView.sinks(format(lost, 'drop')) : words.sideView.rises(format(-lost, 'drop'))
}
