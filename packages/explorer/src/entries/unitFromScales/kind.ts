import type { Unit } from '@swardsink/model'
import type { Kind } from '../../book/index.ts'
import { fullBoxAdds, READINGS, type Readings, type Weighed, weigh, weighAlike, wouldRead } from './weigh.ts'

export const SOURCES = ['scales', 'dimensions'] as const

export type UnitFromScalesSettings = Readings & {
  /** Whether the unit is told by what scales read or by what is known of its body. */
  readonly from: (typeof SOURCES)[number]
}
export type UnitFromScalesInput = {
  readonly readings: Readings
  readonly unit: Unit
  readonly from: UnitFromScalesSettings['from']
}
export type UnitFromScalesResult = {
  readonly weighed: Weighed
  /** Whether the unit in hand answers the readings. */
  readonly answers: boolean
  readonly reads: ReturnType<typeof wouldRead>
  readonly fullBox: ReturnType<typeof fullBoxAdds>
}

/** The readings among the settings. */
export function readingsOf(settings: Readings): Readings {
  return Object.fromEntries(
    READINGS.flatMap(name => (settings[name] === undefined ? [] : [[name, settings[name]]])),
  )
}

/** The unit from a few readings of the scales, or from what is known of its body. */
export const unitFromScales: Kind<
  'unitFromScales',
  UnitFromScalesSettings,
  UnitFromScalesInput,
  UnitFromScalesResult
> = {
  kind: 'unitFromScales',
  read: fields => ({
    from: fields.oneOf('from', SOURCES, 'scales'),
    ...Object.fromEntries(
      READINGS.flatMap(name => {
        const value = fields.number(name, Number.NaN)
        return Number.isNaN(value) ? [] : [[name, value]]
      }),
    ),
  }),
  problems: () => [],
  needs: () => [],
  sets: ({ from }) =>
    from === 'scales'
      ? ['unit.wheelbase', 'unit.edge', 'scales.total', 'scales.front', 'scales.rear']
      : ['body.mass', 'body.at', 'body.height', 'body.offset', 'unit.wheelbase', 'unit.edge'],
  input: ({ settings, scenario }) => ({
    from: settings.from,
    readings: readingsOf(settings),
    unit: scenario.unit,
  }),
  compute({ readings, unit }) {
    const weighed = weigh(readings, unit)
    const answers = weighed.state === 'weighed' && weighAlike(weighed.unit, unit)
    const result = { weighed, answers, reads: wouldRead(unit), fullBox: fullBoxAdds(readings, unit) }
    return { outcome: 'answered', result, cautions: [] }
  },
  offers: ({ reads }) => ({
    total: { quantity: 'mass', value: reads.total },
    front: { quantity: 'mass', value: reads.front },
    rear: { quantity: 'mass', value: reads.rear },
  }),
  workedOut({ input, result, format }) {
    const { unit } = input
    const kg = (mass: number) => format(mass, 'mass', { unit: false })
    const own = { front: unit.frontRoller.mass, rear: unit.rearRoller.mass }
    const { body } = result.weighed.state === 'weighed' ? result.weighed.unit : unit
    const rear = (body.mass * body.at) / unit.wheelbase
    return [
      {
        what: 'scalesBody',
        equation: 'm_body = m_f + m_r − rollers',
        filled: `${kg(body.mass + own.front + own.rear)} − ${kg(own.front)} − ${kg(own.rear)} = ${format(body.mass, 'mass')}`,
      },
      {
        what: 'scalesPlace',
        equation: 'x_body = (m_r − rear roller) B/m_body',
        filled: `${kg(rear)} × ${format(unit.wheelbase, 'wheelbase')}/${kg(body.mass)} = ${format(body.at, 'place')}`,
      },
    ]
  },
  section: '§4',
  check: 'test/explorer/entries/unitFromScales.test.ts',
}
