import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { Server, type Socket } from 'socket.io'
import { describe, expect, onTestFinished, test, vi } from 'vitest'
import { browserClock } from '#client/device/browser-clock.ts'
import type { Link, LinkEvents } from '#client/sync/link.ts'
import { createSocketLink } from '#client/sync/socket-link.ts'
import { makePhone } from '#tests/server/support/phone.ts'

/** The transport's own server, to be ended, refused by and spoken through by hand. */
interface Pipe {
  readonly url: string
  readonly server: Server
  /** Every message that came up. */
  readonly heard: string[]
  readonly sockets: Socket[]
  close(): Promise<void>
}

async function openPipe(port = 0): Promise<Pipe> {
  const http = createServer()
  const server = new Server(http, { transports: ['websocket'] })
  const [heard, sockets]: [string[], Socket[]] = [[], []]
  server.on('connection', socket => {
    sockets.push(socket)
    socket.onAny((event: string, _message, answer?: (said: string) => void) => {
      heard.push(event)
      answer?.(`answer ${event}`)
    })
  })
  await new Promise<void>(resolve => http.listen(port, '127.0.0.1', resolve))
  const url = `http://127.0.0.1:${(http.address() as AddressInfo).port}`
  const pipe = { url, server, heard, sockets, close: () => server.close() }
  onTestFinished(pipe.close)
  return pipe
}

const silent: LinkEvents = {
  up: () => undefined,
  down: () => undefined,
  told: () => undefined,
  offered: () => undefined,
  asked: () => undefined,
  parting: () => undefined,
}

interface Phone {
  readonly link: Link
  readonly ups: () => number
  readonly failures: () => number
  readonly tells: unknown[]
}

const hello = () => makePhone('alder').hello

function startLink(url: string): Phone {
  let [ups, failures] = [0, 0]
  const tells: unknown[] = []
  const events: LinkEvents = { ...silent, up: () => void ups++, told: message => void tells.push(message) }
  const link = createSocketLink({ url, clock: browserClock, failed: () => void failures++ })
  onTestFinished(link.stop)
  link.start(hello, events)
  return { link, ups: () => ups, failures: () => failures, tells }
}

const isUp = ({ ups }: Phone, times = 1) => vi.waitFor(() => expect(ups()).toBe(times), { timeout: 10_000 })

describe('a link over a web socket', () => {
  test('says nothing while it is not connected, and nothing late once it is', async () => {
    const pipe = await openPipe()
    const phone = startLink(pipe.url)
    await expect(phone.link.ask('push', { ops: ['early'] }, 1_000)).rejects.toThrow('no link')
    await isUp(phone)
    expect(await phone.link.ask('pull', {}, 5_000)).toBe('answer pull')
    await pipe.close()
    await vi.waitFor(() => expect(phone.link.ask('push', {}, 1_000)).rejects.toThrow('no link'))
    const again = await openPipe(Number(new URL(pipe.url).port))
    await isUp(phone, 2)
    expect(await phone.link.ask('pull', {}, 5_000)).toBe('answer pull')
    expect([...pipe.heard, ...again.heard]).toEqual(['pull', 'pull'])
  })

  test('that was refused tries again by itself', async () => {
    const pipe = await openPipe()
    let refusals = 0
    pipe.server.use((_socket, next) => (++refusals <= 2 ? next(new Error('not now')) : next()))
    await isUp(startLink(pipe.url))
    expect(refusals).toBe(3)
  })

  test('that the server ended tries again by itself', async () => {
    const pipe = await openPipe()
    const phone = startLink(pipe.url)
    await isUp(phone)
    pipe.sockets[0]?.disconnect(true)
    await isUp(phone, 2)
  })

  test('woken while it waits between two tries connects at once', async () => {
    const pipe = await openPipe()
    const phone = startLink(pipe.url)
    await isUp(phone)
    await pipe.close()
    // After three vain tries the next is one second away or more.
    await vi.waitFor(() => expect(phone.failures()).toBe(3), { timeout: 10_000 })
    await openPipe(Number(new URL(pipe.url).port))
    const wokenAt = performance.now()
    phone.link.renew()
    await isUp(phone, 2)
    expect(performance.now() - wokenAt).toBeLessThan(900)
  })

  test('hears each message once, however often it was made anew', async () => {
    const pipe = await openPipe()
    const phone = startLink(pipe.url)
    for (let time = 1; time <= 20; time++) {
      await isUp(phone, time)
      phone.link.renew()
    }
    await isUp(phone, 21)
    await vi.waitFor(() => expect(pipe.server.sockets.sockets.size).toBe(1))
    pipe.server.emit('tell', 'once')
    await vi.waitFor(() => expect(phone.tells).toEqual(['once']))
    expect(await phone.link.ask('pull', {}, 5_000)).toBe('answer pull')
    expect(phone.tells).toEqual(['once'])
  })

  test('is one connection after fifty starts and stops, and none after the last stop', async () => {
    const pipe = await openPipe()
    const phone = startLink(pipe.url)
    const events: LinkEvents = { ...silent, told: message => void phone.tells.push(message) }
    for (let time = 0; time < 50; time++) {
      phone.link.stop()
      phone.link.start(hello, events)
    }
    await vi.waitFor(() => expect(phone.link.ask('pull', {}, 5_000)).resolves.toBe('answer pull'), { timeout: 5_000 })
    await vi.waitFor(() => expect(pipe.server.engine.clientsCount).toBe(1), { timeout: 5_000 })
    pipe.server.emit('tell', 'once')
    await vi.waitFor(() => expect(phone.tells).toEqual(['once']))
    phone.link.stop()
    await vi.waitFor(() => expect(pipe.server.engine.clientsCount).toBe(0), { timeout: 5_000 })
  })
})
