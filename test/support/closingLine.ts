import type { SerializedError } from 'vitest'
import type { Reporter, TestModule } from 'vitest/node'

type Tally = { passed: number; failed: number; skipped: number }

/** Counts tests; an error outside any test (a file that does not load, a hook, a stray rejection) is a failure. */
function tallyOf(modules: readonly TestModule[], strayErrors: readonly SerializedError[]): Tally {
  const tally: Tally = { passed: 0, failed: strayErrors.length, skipped: 0 }
  for (const module of modules) {
    tally.failed += module.errors().length
    for (const suite of module.children.allSuites()) tally.failed += suite.errors().length
    for (const test of module.children.allTests()) {
      const { state } = test.result()
      // A test still pending when the run is over never ran: that is no pass and no choice to skip.
      tally[state === 'pending' ? 'failed' : state] += 1
    }
  }
  return tally
}

/** Prints `N passed, N failed, N skipped`, alone on the very last line, for people and for machines. */
class ClosingLine implements Reporter {
  private tally: Tally = { passed: 0, failed: 0, skipped: 0 }

  onInit(): void {
    // On exit rather than at the end of the run: other reporters and warnings may still be printing then.
    process.once('exit', () => {
      const { passed, failed, skipped } = this.tally
      if (failed > 0 || passed === 0) process.exitCode = 1
      process.stdout.write(`${passed} passed, ${failed} failed, ${skipped} skipped\n`)
    })
  }

  onTestRunEnd(modules: readonly TestModule[], strayErrors: readonly SerializedError[]): void {
    this.tally = tallyOf(modules, strayErrors)
  }
}

// biome-ignore lint/style/noDefaultExport: the test runner loads a reporter by its default export.
export default ClosingLine
