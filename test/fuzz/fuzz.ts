// npm run fuzz [-- --minutes 10] [--seed 1] [--door "book files"]: odd input at every door, until the time is up.
// With --show each case is put into .cache/fuzzCase.txt before it is tried: the last one there is the one that hangs.
import { mkdirSync, writeFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import fc from 'fast-check'
import { doors } from './doors.ts'
import { keptFinds } from './keptFinds.ts'
import { type Find, tryDoor } from './tryDoor.ts'
import { watch } from './watchdog.ts'

const { values } = parseArgs({
  options: {
    minutes: { type: 'string' },
    seed: { type: 'string' },
    door: { type: 'string' },
    show: { type: 'boolean' },
    path: { type: 'string' },
  },
})
const minutes = Number(values.minutes ?? 10)
const first = Number(values.seed ?? Date.now() % 2 ** 31)
if (!(minutes > 0) || !Number.isSafeInteger(first))
  throw new Error('--minutes takes a number above 0, --seed a whole number')
const open = doors.filter(({ name }) => values.door === undefined || name === values.door)
if (open.length === 0) throw new Error(`--door takes one of ${doors.map(({ name }) => name).join(', ')}`)

/** Cases from one seed: few, so that a find is near its seed. */
const RUNS = 20

if (values.show) mkdirSync('.cache', { recursive: true })
const watched = watch()
const finds: Find[] = []
const tell = (find: Find) => {
  finds.push(find)
  console.log(
    `FOUND at ${find.door}, seed ${find.seed}, path ${find.path}: ${find.what}\n${find.counterexample}\n`,
  )
}

for (const { door: name, what, odd } of keptFinds) {
  const door = open.find(one => one.name === name)
  watched.begin(name, 0)
  try {
    await door?.check(odd)
  } catch (error) {
    tell({
      door: name,
      seed: 0,
      path: '',
      what: `again: ${what}: ${error}`,
      counterexample: fc.stringify(odd),
    })
  }
}

const counts = new Map(open.map(({ name }) => [name, 0]))
const broken = new Set<string>()
const end = Date.now() + minutes * 60_000
for (let seed = first; Date.now() < end && broken.size < open.length; seed++)
  for (const door of open) {
    if (broken.has(door.name)) continue
    const starts = (odd: unknown) => {
      if (values.show) writeFileSync('.cache/fuzzCase.txt', fc.stringify(odd))
      watched.begin(door.name, seed)
      counts.set(door.name, (counts.get(door.name) ?? 0) + 1)
    }
    watched.begin(door.name, seed)
    const find = await tryDoor(door, {
      seed,
      runs: RUNS,
      starts,
      ...(values.path === undefined ? {} : { path: values.path }),
    })
    if (!find) continue
    tell(find)
    // One find a door: the same would come again and again.
    broken.add(door.name)
  }
watched.end()

console.log(`seeds from ${first} on, ${keptFinds.length} past finds first`)
for (const [name, count] of counts) console.log(`${name.padEnd(24)} ${String(count).padStart(8)} cases`)
console.log(`${finds.length} found`)
if (finds.length > 0) process.exitCode = 1
