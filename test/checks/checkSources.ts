// npm run check:sources: what the documents say of sources, and what the tests compare with, both ways.
import { readTexts } from './readTexts.ts'
import { sourceProblems, sourceRows } from './sourceProblems.ts'

const texts = readTexts()
const problems = sourceProblems(texts)
for (const problem of problems) console.error(problem)
const rows = sourceRows(texts.sources).filter(({ cites }) => cites.size > 0)
const cited = new Set(rows.flatMap(({ cites }) => [...cites]))
console.log(`${cited.size} sources in ${rows.length} rows, ${problems.length} problems`)
if (problems.length > 0) process.exitCode = 1
