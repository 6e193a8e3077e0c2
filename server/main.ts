import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import pino from 'pino'
import { type App, createApp } from './app.ts'
import { greetingOf, networkAddresses } from './greeting.ts'
import { parseSettings, type Settings } from './settings.ts'
import { StartFault } from './start-fault.ts'

const mostClosingMs = 4_000
const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)

/** One clear line, and the end. */
function giveUp(line: string): never {
  process.stderr.write(`${line}\n`)
  process.exit(1)
}

function readTls({ tlsFiles }: Settings): { cert: Buffer; key: Buffer } | null {
  if (tlsFiles === null) return null
  return { cert: readNamed('TLS_CERT', tlsFiles.cert), key: readNamed('TLS_KEY', tlsFiles.key) }
}

function readNamed(name: string, path: string): Buffer {
  try {
    return readFileSync(path)
  } catch (error) {
    throw new StartFault(`${name} cannot be read: ${(error as Error).message}.`)
  }
}

/** Built, this file is dist/server/main.js; from the sources, server/main.ts. */
const clientFolder = fileURLToPath(
  new URL(import.meta.url.endsWith('.ts') ? '../dist/client' : '../client', import.meta.url),
)

async function start(settings: Settings): Promise<void> {
  const logger = pino(
    { level: settings.logLevel, redact: ['*.authorization', '*["x-invite"]', '*.key', '*.secret'] },
    pino.destination({ fd: 2, sync: true }),
  )
  const { host, publicUrl } = settings
  const tls = readTls(settings)
  const app = await createApp({ ...settings, clientFolder, logger, tls })
  process.stdout.write(greetingOf({ host, port: app.port, isTls: tls !== null, publicUrl }, networkAddresses()))
  stopOnSignal(app)
}

function stopOnSignal(app: App): void {
  const stop = () => {
    setTimeout(() => process.exit(0), mostClosingMs).unref()
    app.close().then(
      () => process.exit(0),
      error => giveUp(`The server did not end cleanly: ${error}`),
    )
  }
  for (const signal of ['SIGTERM', 'SIGINT'] as const) process.on(signal, stop)
}

if (major < 20 || (major === 20 && minor < 19)) {
  giveUp(`Six Threes needs Node 20.19 or newer; this is ${process.versions.node}.`)
}
const settings = parseSettings(process.env)
if (!settings.ok) giveUp(settings.error)
try {
  await start(settings.value)
} catch (error) {
  giveUp(error instanceof StartFault ? error.message : `The server could not start: ${error}`)
}
