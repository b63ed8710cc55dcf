#!/usr/bin/env node
// The command line itself is TypeScript, built into dist/. This launcher is committed so that an install
// finds a file to link before anything has been built.
import { existsSync } from 'node:fs'

const built = new URL('../dist/command.js', import.meta.url)

if (existsSync(built)) {
  await import(built.href)
} else {
  console.error(
    'swardsink is not built yet: run `npm run build` in the folder of the project, then try again.',
  )
  process.exitCode = 1
}
