// Keeps a built copy of this version's page and server under tests/fixtures/previous-version: what the suite calls the
// previous version from then on. The server is one file with its packages inside, except the database module.

import { execFileSync } from 'node:child_process'
import { cpSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { build } from 'vite'
import { root } from './setup/places.mjs'
import { runSetup } from './setup/run.mjs'

await runSetup(['deps', 'build'])
const kept = join(root, 'tests/fixtures/previous-version')
rmSync(kept, { recursive: true, force: true })
cpSync(join(root, 'dist/client'), join(kept, 'client'), {
  recursive: true,
  filter: source => !source.endsWith('.map'),
})
await build({
  configFile: join(root, 'server/vite.config.ts'),
  build: { outDir: join(kept, 'server'), sourcemap: false, emptyOutDir: true },
  ssr: { noExternal: true, external: ['@photostructure/sqlite'] },
})
const commit = execFileSync('git', ['rev-parse', '--short', 'HEAD'], { cwd: root, encoding: 'utf8' }).trim()
writeFileSync(
  join(kept, 'README.md'),
  `Built by \`node scripts/keep-version.mjs\` at ${commit}. Page and server as they were; never edited by hand.\n`,
)
