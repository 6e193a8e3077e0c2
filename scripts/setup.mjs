// Installs and builds what is missing: node scripts/setup.mjs [deps] [build] [chromium]
import './setup/node-version.mjs'
import { runSetup } from './setup/run.mjs'

await runSetup(process.argv.slice(2))
