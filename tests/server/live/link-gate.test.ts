import { get, type IncomingMessage } from 'node:http'
import { text } from 'node:stream/consumers'
import { describe, expect, it } from 'vitest'
import { createLinkGate } from '#server/live/link-gate.ts'
import { defaultLinksPerAddress } from '#server/settings.ts'
import { connect, headersOf, openLine, startApp, until } from '#tests/server/support/app.ts'
import { makePhone } from '#tests/server/support/phone.ts'

const from = (address: string) => ({ headers: { host: address } }) as IncomingMessage
const gateWith = (change: Partial<Parameters<typeof createLinkGate>[0]> = {}) =>
  createLinkGate({
    isOwnOrigin: () => true,
    addressOf: ({ headers }) => headers.host ?? '',
    most: 20_000,
    mostOfAddress: defaultLinksPerAddress,
    ...change,
  })

describe('the gate for links', () => {
  it('lets a field of a thousand phones and three times as many boards in behind one address, and no more', () => {
    const gate = gateWith()
    for (let n = 0; n < 4_000; n++) {
      expect(gate.refuse(from('192.0.2.1'))).toBeNull()
      gate.enter(from('192.0.2.1'))
    }
    expect(gate.refuse(from('192.0.2.1'))).toBe('address full')
    expect(gate.refuse(from('192.0.2.2'))).toBeNull()
    expect(gate.refused).toEqual({ 'another site': 0, 'server full': 0, 'address full': 1 })
  })

  it('counts a network of IPv6 as one address, and a link that ends no more', () => {
    const gate = gateWith({ mostOfAddress: 2 })
    const one = gate.enter(from('2001:db8::1'))
    gate.enter(from('2001:db8::2'))
    expect(gate.refuse(from('2001:0db8:0:0:ffff::3'))).toBe('address full')
    one.leave()
    expect(gate.refuse(from('2001:db8::3'))).toBeNull()
  })

  it('lets in as many of an address as the server holds where no number is set', () => {
    const gate = gateWith({ mostOfAddress: 0, most: 3 })
    for (let n = 0; n < 3; n++) gate.enter(from('192.0.2.1'))
    expect(gate.refuse(from('192.0.2.2'))).toBe('server full')
  })

  it('asks for the site first', () => {
    expect(gateWith({ isOwnOrigin: () => false, most: 0 }).refuse(from('192.0.2.1'))).toBe('another site')
  })
})

/** What a web socket that is not opened is told. */
const refusalAt = (url: string): Promise<{ status: number | undefined; said: unknown }> =>
  new Promise((resolve, reject) => {
    const headers = {
      connection: 'Upgrade',
      upgrade: 'websocket',
      'sec-websocket-version': '13',
      'sec-websocket-key': 'AAAAAAAAAAAAAAAAAAAAAA==',
      'x-forwarded-for': '192.0.2.1',
    }
    get(`${url}/socket.io/?EIO=4&transport=websocket`, { headers }, answer => {
      text(answer).then(said => resolve({ status: answer.statusCode, said }), reject)
    }).on('error', reject)
  })

it('an address that has all its links is told so and counted; it goes on by plain requests, and others come in', async () => {
  const app = await startApp({ linksPerAddress: 2, trustedHops: 1, metricsPort: 0 })
  const alder = makePhone('alder')
  const first = openLine(app.url, alder.hello, { 'x-forwarded-for': '192.0.2.1' })
  const second = openLine(app.url, makePhone('birch').hello, { 'x-forwarded-for': '192.0.2.1' })
  await until('both are in', () => first.socket.connected && second.socket.connected)
  await first.ask('push', { ops: [alder.op([alder.keyFact('desk')])] })

  const { status, said } = await refusalAt(app.url)
  expect([status, said]).toEqual([400, expect.stringContaining('address full')])
  const gauges = async () => (await fetch(`http://127.0.0.1:${app.metricsPort}/metrics`)).text()
  expect(await gauges()).toContain('sixthrees_links_refused_total{reason="address_full"} 1')
  const byRequest = await fetch(`${app.url}/api/logs/quillmoor/ops?feed=all&after=0`, {
    headers: { ...headersOf(alder), 'x-forwarded-for': '192.0.2.1' },
  })
  expect(await byRequest.json()).toMatchObject({ kind: 'pulled' })
  expect((await connect(app.url, makePhone('rowan'))).socket.connected).toBe(true)

  second.socket.close()
  await expect.poll(gauges).toMatch(/^sixthrees_links 2$/m)
  const third = openLine(app.url, makePhone('cedar').hello, { 'x-forwarded-for': '192.0.2.1' })
  await until('the third is in', () => third.socket.connected)
})
