import { mkdtempSync } from 'node:fs'
import { createServer } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Server } from 'socket.io'
import { loadDriver } from '#server/store/driver.ts'

/**
 * The yardstick: the least a live server can do. It passes each score on to the others in its room; with `durable` it
 * first writes it as one row with synchronous FULL. Prints its port as one line of JSON.
 */
const durable = process.argv.includes('durable')

async function createRowWriter(): Promise<(text: string) => void> {
  const { DatabaseSync } = await loadDriver()
  const database = new DatabaseSync(join(mkdtempSync(join(tmpdir(), 'relay-')), 'relay.db'))
  database.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; CREATE TABLE rows (text TEXT NOT NULL)')
  const insert = database.prepare('INSERT INTO rows (text) VALUES (?)')
  return text => {
    // The statement alone does not keep its database from being collected.
    if (database.isOpen) insert.run(text)
  }
}

const write = durable ? await createRowWriter() : () => {}
const http = createServer()
const io = new Server(http, { transports: ['websocket'] })

io.on('connection', socket => {
  void socket.join(String(socket.handshake.auth.room))
  socket.on('score', (text: string, answer: () => void) => {
    write(text)
    answer()
    socket.to(String(socket.handshake.auth.room)).emit('score', text)
  })
})

http.listen(0, '127.0.0.1', () => {
  const address = http.address()
  console.log(JSON.stringify({ port: typeof address === 'object' && address ? address.port : 0 }))
})
