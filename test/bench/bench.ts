import { doorRows, doorsSkipped } from './doorRows.ts'
import { fitRows } from './fitRows.ts'
import { mapRows } from './mapRows.ts'
import { interleaved } from './measure.ts'
import { patchRows } from './patchRows.ts'
import { startPeers } from './peers.ts'
import { pressRows } from './pressRows.ts'
import { table } from './table.ts'
import { unitRows } from './unitRows.ts'

// npm run bench -- --json --only fit: rows whose name holds the word
const words = process.argv.slice(2)
const only = words.includes('--only') ? (words[words.indexOf('--only') + 1] ?? '') : ''

const peers = startPeers()
const everyRow = [
  ...pressRows(peers),
  ...unitRows(peers),
  ...mapRows(peers),
  ...fitRows(peers),
  ...patchRows(peers),
  ...doorRows,
]
const skipped = [...peers.skipped, ...doorsSkipped]
try {
  const rows = await interleaved(everyRow.filter(({ name }) => name.includes(only)))
  process.stdout.write(
    words.includes('--json')
      ? `${JSON.stringify({ node: process.version, rows, skipped }, null, 2)}\n`
      : `${table(rows, skipped)}\n`,
  )
} finally {
  peers.stop()
}
