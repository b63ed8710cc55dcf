import type { SettledUnit } from '@swardsink/model'
import type { Shown } from '../view.ts'
import type { SideViewSettings } from './kind.ts'

export function sideViewFinding({ result, scenario, reader }: Shown<SideViewSettings, SettledUnit>): string {
  const { words, format } = reader
  const lost = scenario.unit.benchHeight - result.effectiveHeight.middle
  if (lost < 0) return words.sideView.rises(format(-lost, 'drop'))
  const [down, nothing] = [format(result.unrecovered, 'drop'), format(0, 'drop')]
  if (down === nothing) return words.sideView.sinks(format(lost, 'drop'))
  return words.sideView.sinksAndRecovers({
    drop: format(result.drop.middle, 'drop'),
    unrecovered: down,
    lost: format(lost, 'drop'),
  })
}
