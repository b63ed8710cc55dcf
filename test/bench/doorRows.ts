import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { resolve } from 'node:path'
import { readTable } from '@swardsink/model'
import { even } from './cases.ts'
import { type Contestant, type Row, timed } from './measure.ts'
import { plainTable } from './straightforward/table.ts'

const LINES = 100_000

const text = [
  'set,replicate,plate_diameter_mm,load_N,sinkage_mm',
  ...Array.from(
    { length: LINES },
    (_, i) => `green ${i % 40},${i % 5},50,${20 + (i % 90)},${(1 + even(i, 0)).toFixed(2)}`,
  ),
].join('\n')

/** CPU of a whole process, told by the shell that waits for it. */
const started =
  (words: string): Contestant =>
  () => {
    const { stdout } = spawnSync('sh', ['-c', `${words} > /dev/null; times`], { encoding: 'utf8' })
    const children = stdout.trim().split('\n').at(-1) ?? ''
    const seconds = [...children.matchAll(/(\d+)m([\d.]+)s/g)].reduce(
      (total, [, minutes, rest]) => total + 60 * Number(minutes) + Number(rest),
      0,
    )
    return { seconds, pieces: 1 }
  }

const node = JSON.stringify(process.execPath)
const command = resolve('packages/model/bin/swardsink.js')
const scenario = resolve('docs/examples/ellerby-hollow.json')
const isBuilt = existsSync(resolve('packages/model/dist/command.js'))

export const doorRows: readonly Row[] = [
  {
    name: `readTable, ${LINES} rows`,
    per: 'row',
    by: {
      ours: timed(() => {
        const read = readTable(text)
        if (!read.ok) throw new Error('the table of the bench has problems')
        return { pieces: LINES }
      }),
      plain: timed(() => ({ pieces: plainTable(text).length })),
    },
  },
  ...(isBuilt
    ? [
        {
          name: 'start of the command line: settle, against node alone',
          per: 'start',
          by: {
            ours: started(`${node} ${JSON.stringify(command)} settle ${JSON.stringify(scenario)}`),
            plain: started(`${node} -e 0`),
          },
          bar: { most: 2.5, of: 'plain' } as const,
        },
      ]
    : []),
]

/** What of this is left out, and why. */
export const doorsSkipped = isBuilt ? [] : ['the command line is skipped: not built (npm run build)']
