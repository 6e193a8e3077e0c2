import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { connect as connectTcp, type Socket } from 'node:net'
import { fileURLToPath } from 'node:url'
import { expect, it, onTestFinished } from 'vitest'
import { connect } from './support/app.ts'
import { makeFolder } from './support/folder.ts'
import { fact, makePhone } from './support/phone.ts'
import { type ServerProcess, urlOf } from './support/process.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))

/** The real server, allowed this many open files. */
function startWithFiles(most: number): ServerProcess {
  const child = spawn('sh', ['-c', `ulimit -n ${most} && exec "$0" --import tsx server/main.ts`, process.execPath], {
    cwd: root,
    env: { PATH: process.env.PATH, HOST: '127.0.0.1', PORT: '0', LOG_LEVEL: 'error', DATA_DIR: makeFolder() },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const said = { out: '', err: '' }
  child.stdout?.on('data', chunk => {
    said.out += chunk
  })
  child.stderr?.on('data', chunk => {
    said.err += chunk
  })
  onTestFinished(() => void child.kill('SIGKILL'))
  return { child, said, ended: once(child, 'close').then(([status, signal]) => status ?? signal) }
}

const openMany = (port: number, count: number): Socket[] =>
  Array.from({ length: count }, () => {
    const socket = connectTcp(port, '127.0.0.1')
    socket.on('error', () => {})
    onTestFinished(() => void socket.destroy())
    return socket
  })

it('a server that has no file handles left goes on and takes phones again once some are free', async () => {
  const server = startWithFiles(256)
  const url = await urlOf(server)
  const alder = makePhone('alder')
  const line = await connect(url, alder)
  await line.ask('push', { ops: [alder.op([alder.keyFact('desk')])] })
  const crowd = openMany(Number(new URL(url).port), 400)
  await Promise.all(crowd.map(socket => Promise.race([once(socket, 'connect'), once(socket, 'close')])))
  // Who is in stores on.
  expect(await line.ask('push', { ops: [alder.op([fact('title', 'Saturday')])] })).toMatchObject({
    verdicts: [{ kind: 'stored' }],
  })
  for (const socket of crowd) socket.destroy()
  const birch = await connect(url, makePhone('birch'))
  expect(await birch.ask('pull', { feed: 'all', after: 0 })).toMatchObject({ kind: 'stranger' })
  expect(server.child.exitCode).toBeNull()
})
