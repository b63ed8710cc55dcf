import { parseArgs } from 'node:util'
import { type MapQuantity, mapQuantities, type Position, type UnitSystem } from '../src/index.ts'

/** What the caller wants, or why the words make no sense. */
export type Wanted = {
  readonly command: 'settle' | 'compare' | 'map'
  readonly file: string
  readonly json: boolean
  readonly units: UnitSystem
  readonly arc: 'parabola' | 'circle'
  readonly balance: 'tilted' | 'level'
  readonly position: Position
  readonly quantity: MapQuantity
  readonly masses?: readonly number[]
  readonly softnesses?: readonly number[]
}

export const usage = `usage: swardsink settle  SCENARIO [--json] [--units metric|US] [--arc parabola|circle] [--balance tilted|level]
       swardsink compare SCENARIO [--json] [--units metric|US] [--arc parabola|circle] [--position front|rear]
       swardsink map     SCENARIO [--json] [--units metric|US] [--arc parabola|circle]
                                  [--quantity sinkage|drop|effectiveHeight|peakPressure]
                                  [--masses 4,5,6] [--softnesses 0.2,0.4]
       swardsink fit     READINGS... [--law power] [--free softness,exponent] [--per-set softness] [--hold spread=1.5mm]
                                  [--noise estimated|0.05mm] [--datum] [--level 0.95] [--scenario SCENARIO]
                                  [--json] [--report] [--units metric|US] [--export R|Python FILE]

settle   how deep the rollers sink, and at what height the unit cuts
compare  every roller of the scenario on the same unit, with the bench height to set for each
map      a quantity over the front roller's mass and the softness of the turf
fit      the turf that readings of a gauge ask for, and how sure that is; several tables give one line each

SCENARIO is a JSON file, READINGS a table (CSV); - reads standard input. --masses are in kg (lb with --units US),
--softnesses in mm (in). --law is a kind of law or a turf of the scenario; --free are all its numbers unless said;
--per-set has a value for each set; --noise is known if every row says sd_mm, else estimated, unless said; --datum
takes the zero of the gauge as unknown in each set; --report adds the methods; --export writes the same fit as a script.
Exit code: 0 answered, 1 the input is at fault, 2 wrong usage.
`

export class UsageError extends Error {}

export const oneOf = <Word extends string>(
  option: string,
  given: string | undefined,
  words: readonly Word[],
): Word => {
  if (given === undefined) return words[0]!
  const found = words.find(word => word === given)
  if (!found) throw new UsageError(`--${option}: expected one of ${words.join(', ')}, received ${given}`)
  return found
}

function numbers(option: string, given: string | undefined): number[] | undefined {
  if (given === undefined) return undefined
  const list = given.split(',').map(word => (word.trim() === '' ? Number.NaN : Number(word)))
  if (list.some(value => !Number.isFinite(value)))
    throw new UsageError(`--${option}: expected numbers with commas between them, received ${given}`)
  return list
}

const options = {
  json: { type: 'boolean' },
  units: { type: 'string' },
  arc: { type: 'string' },
  balance: { type: 'string' },
  position: { type: 'string' },
  quantity: { type: 'string' },
  masses: { type: 'string' },
  softnesses: { type: 'string' },
} as const

/** Options that only some commands know. */
const belongs: Record<Wanted['command'], readonly string[]> = {
  settle: ['json', 'units', 'arc', 'balance'],
  compare: ['json', 'units', 'arc', 'position'],
  map: ['json', 'units', 'arc', 'quantity', 'masses', 'softnesses'],
}

function parsed(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true })
  } catch (error) {
    throw new UsageError(error instanceof Error ? error.message : String(error))
  }
}

/** Reads the words of a call. Throws UsageError with a sentence. */
export function wantedFrom(args: readonly string[]): Wanted {
  const { values, positionals } = parsed(args)
  const [command, file, more] = positionals
  if (!command) throw new UsageError('expected a command: settle, compare, map or fit')
  const known = (Object.keys(belongs) as Wanted['command'][]).find(name => name === command)
  if (!known) throw new UsageError(`expected one of settle, compare, map, fit, received ${command}`)
  if (!file) throw new UsageError(`${command}: expected a scenario file, or - for standard input`)
  if (more) throw new UsageError(`${command}: expected one scenario file, received ${more} as well`)
  const stranger = Object.keys(values).find(name => !belongs[known].includes(name))
  if (stranger)
    throw new UsageError(
      `--${stranger}: ${command} knows ${belongs[known].map(name => `--${name}`).join(', ')}`,
    )
  const masses = numbers('masses', values.masses)
  const softnesses = numbers('softnesses', values.softnesses)
  return {
    command: known,
    file,
    json: values.json ?? false,
    units: oneOf('units', values.units, ['metric', 'US']),
    arc: oneOf('arc', values.arc, ['parabola', 'circle']),
    balance: oneOf('balance', values.balance, ['tilted', 'level']),
    position: oneOf('position', values.position, ['front', 'rear']),
    quantity: oneOf('quantity', values.quantity, mapQuantities),
    ...(masses ? { masses } : {}),
    ...(softnesses ? { softnesses } : {}),
  }
}
