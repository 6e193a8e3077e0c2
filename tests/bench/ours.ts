import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pino } from 'pino'
import { createApp } from '#server/app.ts'

/** The product's own server on a port and a data folder of its own. Prints its port as one line of JSON. */
const app = await createApp({
  port: 0,
  host: '127.0.0.1',
  dataFolder: mkdtempSync(join(tmpdir(), 'six-threes-')),
  clientFolder: 'dist/client',
  logger: pino({ level: 'error' }, pino.destination(2)),
  limits: { messagesPerSecond: 1_000_000, strangersPerMinute: 1_000_000, wrongWordsPerMinute: 1_000_000 },
})
console.log(JSON.stringify({ port: app.port }))
process.on('SIGTERM', () => {
  void app.close().then(() => process.exit(0))
})
