const usage = `usage: swardsink --help

Swardsink works out how far the rollers of a cylinder mower sink into turf, and at what height the grass
is really cut. This build carries the library only; its commands are not in it yet.
`

const wanted = process.argv.slice(2)
const asked = wanted.length === 1 && (wanted[0] === '--help' || wanted[0] === '-h')
if (asked) process.stdout.write(usage)
else {
  process.stderr.write(usage)
  process.exitCode = 2
}
