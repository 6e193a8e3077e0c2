import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import pino from 'pino'
import { io, type Socket } from 'socket.io-client'
import { onTestFinished } from 'vitest'
import { type App, type AppOptions, createApp } from '#server/app.ts'
import { makeFolder } from './folder.ts'
import type { Phone } from './phone.ts'

export interface RunningApp extends App {
  readonly url: string
  readonly dataFolder: string
  /** Every line that the server has logged. */
  readonly lines: readonly string[]
}

/** A page of three files, in place of the built one; a folder with a dot in its path serves like any other. */
function makeClient(): string {
  const folder = join(makeFolder(), '.page')
  mkdirSync(join(folder, 'assets'), { recursive: true })
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>Six Threes</title>')
  writeFileSync(join(folder, 'worker.js'), '// worker')
  writeFileSync(join(folder, 'assets', 'main-1234.js'), '// main')
  return folder
}

const generous = { messagesPerSecond: 1_000_000, strangersPerMinute: 1_000_000, wrongWordsPerMinute: 1_000_000 }

export async function startApp(changes: Partial<AppOptions> = {}): Promise<RunningApp> {
  const lines: string[] = []
  const logger = pino({ level: 'trace' }, { write: line => void lines.push(line) })
  const dataFolder = makeFolder()
  const options = { port: 0, host: '127.0.0.1', dataFolder, clientFolder: makeClient(), logger, limits: generous }
  const app = await createApp({ ...options, ...changes })
  onTestFinished(() => app.close())
  return { ...app, url: `http://127.0.0.1:${app.port}`, dataFolder, lines }
}

export const headersOf = ({ hello }: Phone): Record<string, string> => ({
  authorization: `Bearer ${hello.device}:${hello.key}`,
  ...(hello.invite ? { 'x-invite': `${hello.invite.id}:${hello.invite.secret}` } : {}),
})

export interface Line {
  readonly socket: Socket
  /** Sends a message and waits for its answer. */
  ask(event: string, message: unknown): Promise<unknown>
  /** Everything said unasked, oldest first. */
  readonly heard: readonly { readonly event: string; readonly message: unknown }[]
}

/** A socket of its own; not connected yet when the server refuses it. */
export function openLine(url: string, auth: unknown, headers: Record<string, string> = {}): Line {
  const socket = io(url, {
    transports: ['websocket'],
    auth: auth as Record<string, unknown>,
    extraHeaders: headers,
    forceNew: true,
    reconnection: false,
  })
  onTestFinished(() => void socket.close())
  const heard: { event: string; message: unknown }[] = []
  socket.onAny((event: string, message: unknown) => heard.push({ event, message }))
  return { socket, heard, ask: (event, message) => socket.timeout(10_000).emitWithAck(event, message) }
}

export async function connect(url: string, phone: Phone): Promise<Line> {
  const line = openLine(url, phone.hello)
  await new Promise<void>((resolve, reject) => {
    line.socket.once('connect', resolve)
    line.socket.once('connect_error', reject)
  })
  return line
}

/** Waits until the condition holds; fails with its name after five seconds. */
export async function until(name: string, holds: () => boolean): Promise<void> {
  const giveUpAt = Date.now() + 5_000
  while (!holds()) {
    if (Date.now() > giveUpAt) throw new Error(`never: ${name}`)
    await new Promise(resolve => setTimeout(resolve, 5))
  }
}
