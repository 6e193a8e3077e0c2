import { once } from 'node:events'
import { connect as connectTcp, type Socket } from 'node:net'
import { expect, it, onTestFinished } from 'vitest'
import { connect } from './support/app.ts'
import { makeFolder } from './support/folder.ts'
import { fact, makePhone } from './support/phone.ts'
import { startServer, urlOf } from './support/process.ts'

const openMany = (port: number, count: number): Socket[] =>
  Array.from({ length: count }, () => {
    const socket = connectTcp(port, '127.0.0.1')
    socket.on('error', () => {})
    onTestFinished(() => void socket.destroy())
    return socket
  })

it('a server that has no file handles left goes on and takes phones again once some are free', async () => {
  const server = startServer({ PORT: '0', DATA_DIR: makeFolder() }, 256)
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
