// Installs and builds what is missing: node scripts/setup.mjs [deps] [build] [chromium]
// This file keeps to syntax that an old Node reads, so that the line about its version can be said.
import process from 'process'

const needed = [20, 19]
const [major, minor] = process.versions.node.split('.').map(Number)

if (major < needed[0] || (major === needed[0] && minor < needed[1])) {
  process.stderr.write('Six Threes needs Node ' + needed.join('.') + ' or newer; this is ' + process.version + '.\n')
  process.exit(1)
}

import('./setup/run.mjs').then(module => module.runSetup(process.argv.slice(2)))
