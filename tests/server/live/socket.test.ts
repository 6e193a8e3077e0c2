import { describe, expect, it } from 'vitest'
import { defaultLimits } from '#server/live/limiter.ts'
import { connect, headersOf, openLine, startApp, until } from '#tests/server/support/app.ts'
import { fact, inviteFact, makeInvite, makePhone, score } from '#tests/server/support/phone.ts'

const invite = makeInvite('d', 'desk')

async function startRound() {
  const app = await startApp()
  const alder = makePhone('alder')
  const line = await connect(app.url, alder)
  await line.ask('push', { ops: [alder.op([alder.keyFact('desk'), inviteFact(invite)])] })
  const { era } = (await line.ask('follow', { era: null, feeds: [{ feed: 'g/a', after: 0 }] })) as { era: string }
  await line.ask('follow', { era, feeds: [{ feed: 'g/a', after: 1 }] })
  return { app, alder, line, era }
}

const tellsOf = (heard: readonly { event: string; message: unknown }[]) =>
  heard.filter(({ event }) => event === 'tell').map(({ message }) => message as { before: number; upTo: number })

describe('deleting over a socket and by HTTP', () => {
  it('answers the desk before its link ends, and tells the others why', async () => {
    const app = await startApp()
    const alder = makePhone('alder')
    const birch = makePhone('birch', invite)
    const desk = await connect(app.url, alder)
    await desk.ask('push', { ops: [alder.op([alder.keyFact('desk'), inviteFact(invite)])] })
    const other = await connect(app.url, birch)
    for (const line of [desk, other]) await line.ask('follow', { era: null, feeds: [{ feed: 'all', after: 0 }] })
    expect(await desk.ask('delete', {})).toEqual({ kind: 'deleted' })
    const parting = { event: 'parting', message: { why: 'deleted' } }
    await until('both are told', () => [desk, other].every(({ heard }) => heard.at(-1)?.event === 'parting'))
    expect([desk, other].map(({ heard }) => heard.at(-1))).toEqual([parting, parting])
    const headers = { ...headersOf(birch), 'content-type': 'application/json' }
    const again = await fetch(`${app.url}/api/logs/quillmoor/delete`, { method: 'POST', headers, body: '{}' })
    expect(await again.json()).toEqual({ kind: 'stranger', why: 'deleted' })
  })
})

describe('a socket', () => {
  it('hears of another phone’s op, and of its own', async () => {
    const { app, alder, line, era } = await startRound()
    const birch = makePhone('birch', invite)
    const other = await connect(app.url, birch)
    await other.ask('push', { ops: [birch.op([birch.keyFact('desk')])] })
    await other.ask('follow', { era, feeds: [{ feed: 'g/a', after: 2 }] })
    await line.ask('push', { ops: [alder.op([score('a', 4)])] })
    await until('both hear', () => [line, other].every(({ heard }) => tellsOf(heard).at(-1)?.upTo === 3))
    expect(tellsOf(other.heard)).toMatchObject([{ feed: 'g/a', before: 2, upTo: 3 }])
  })

  it('is answered by a fault for a message that does not exist, and nothing for one that asks no answer', async () => {
    const { alder, line, app } = await startRound()
    expect(await line.ask('erase', {})).toEqual({ kind: 'fault', code: 'wrong shape', path: 'event' })
    line.socket.emit('push', { ops: [alder.op([fact('title', 'Quillmoor')])] })
    line.socket.emit('push')
    line.socket.emit('follow', null, 1, 'x')
    expect(await line.ask('pull', { feed: 'all', after: 0 })).toMatchObject({ kind: 'pulled', part: { upTo: 1 } })
    expect((await fetch(`${app.url}/healthz`)).status).toBe(200)
  })

  it('is not opened for a page of another site, nor for a hello of another shape', async () => {
    const { app, alder } = await startRound()
    const refusal = (auth: unknown, headers: Record<string, string> = {}) =>
      new Promise<unknown>(resolve => {
        const { socket } = openLine(app.url, auth, headers)
        socket.once('connect', () => resolve('connected'))
        socket.once('connect_error', error => resolve((error as { data?: unknown }).data ?? 'refused'))
      })
    expect(await refusal(alder.hello, { origin: 'https://elsewhere.example' })).toBe('refused')
    expect(await refusal({ ...alder.hello, key: 'short' })).toEqual({ kind: 'fault', code: 'wrong shape', path: 'key' })
    expect(await refusal(alder.hello, { origin: app.url })).toBe('connected')
  })

  it('ends when a newer one of the same phone follows', async () => {
    const { app, alder, line, era } = await startRound()
    const newer = await connect(app.url, alder)
    await newer.ask('follow', { era, feeds: [{ feed: 'g/a', after: 1 }] })
    await until('the older is gone', () => !line.socket.connected)
    expect(line.heard.at(-1)).toEqual({ event: 'parting', message: { why: 'another link' } })
    expect(newer.socket.connected).toBe(true)
  })

  it('ends when its key is voided', async () => {
    const { app, alder, line, era } = await startRound()
    const birch = makePhone('birch', invite)
    const other = await connect(app.url, birch)
    await other.ask('push', { ops: [birch.op([birch.keyFact('desk')])] })
    await other.ask('follow', { era, feeds: [{ feed: 'g/a', after: 2 }] })
    await line.ask('push', { ops: [alder.op([fact('void/key/birch', true)])] })
    await until('it is gone', () => !other.socket.connected)
    expect(other.heard.at(-1)).toEqual({ event: 'parting', message: { why: 'voided' } })
  })

  it('of a phone that was taken out comes back by nothing that it had, and hears nothing more', async () => {
    const { app, alder, line, era } = await startRound()
    const birch = makePhone('birch', invite)
    const other = await connect(app.url, birch)
    await other.ask('push', { ops: [birch.op([birch.keyFact('desk')])] })
    await other.ask('follow', { era, feeds: [{ feed: 'g/a', after: 2 }] })
    const session = other.socket.id ?? ''
    // It loses its network, and is taken out meanwhile.
    other.socket.io.engine.close()
    await line.ask('push', { ops: [alder.op([fact('void/key/birch', true)])] })
    // What a resumed session would say beside the hello.
    const again = openLine(app.url, { ...birch.hello, pid: session, offset: '1' })
    const refusal = await new Promise(resolve => {
      again.socket.once('connect', () => resolve('connected'))
      again.socket.once('connect_error', error => resolve((error as { data?: unknown }).data))
    })
    expect(refusal).toMatchObject({ kind: 'fault' })
    const back = await connect(app.url, birch)
    expect(back.socket.recovered).not.toBe(true)
    const voided = { kind: 'stranger', why: 'voided' }
    expect(await back.ask('follow', { era, feeds: [{ feed: 'g/a', after: 0 }] })).toEqual(voided)
    expect(await back.ask('pull', { feed: 'all', after: 0 })).toEqual(voided)
    await line.ask('push', { ops: [alder.op([score('a', 4)])] })
    await until('the desk hears', () => tellsOf(line.heard).at(-1)?.upTo === 4)
    expect(await back.ask('pull', { feed: 'all', after: 0 })).toEqual(voided)
    expect(back.heard).toEqual([])
  })

  it('is told of a restart, whether it follows or not', async () => {
    const { app, line, alder } = await startRound()
    const idle = await connect(app.url, makePhone('cedar', invite, alder.hello.log))
    await app.close()
    await until('both are gone', () => !line.socket.connected && !idle.socket.connected)
    for (const { heard } of [line, idle])
      expect(heard.at(-1)).toEqual({ event: 'parting', message: { why: 'restart' } })
  })

  it('that sends too much in a second is asked to come again, and nothing is lost', async () => {
    const app = await startApp({ limits: { ...defaultLimits, messagesPerSecond: 5 } })
    const alder = makePhone('alder')
    const line = await connect(app.url, alder)
    const ops = [alder.op([alder.keyFact('desk')]), ...Array.from({ length: 9 }, () => alder.op([score('a', 4)]))]
    const answers = await Promise.all(ops.map(op => line.ask('push', { ops: [op] })))
    const verdicts = answers.flatMap(answer => (answer as { verdicts: { kind: string; reason?: string }[] }).verdicts)
    expect(verdicts.slice(-5)).toEqual(Array.from({ length: 5 }, () => ({ kind: 'later', reason: 'busy' })))
  })

  it('of a stranger who asks too often hears nothing more; a known phone of that address does', async () => {
    const app = await startApp({ limits: { ...defaultLimits, strangersPerMinute: 3 } })
    const alder = makePhone('alder')
    const line = await connect(app.url, alder)
    await line.ask('push', { ops: [alder.op([alder.keyFact('desk')])] })
    const rowan = await connect(app.url, makePhone('rowan'))
    const whys: unknown[] = []
    for (let i = 0; i < 5; i++)
      whys.push(((await rowan.ask('pull', { feed: 'all', after: 0 })) as { why: unknown }).why)
    expect(whys).toEqual(['key unknown', 'key unknown', 'key unknown', 'busy', 'busy'])
    expect(await line.ask('pull', { feed: 'all', after: 0 })).toMatchObject({ kind: 'pulled' })
  })
})

describe('a socket that takes nothing', () => {
  it('is dropped instead of filling the server’s memory, and the others go on', async () => {
    const { app, alder, line, era } = await startRound()
    const stalled = await connect(app.url, makePhone('birch', invite))
    await stalled.ask('follow', { era, feeds: [{ feed: 'g/a', after: 1 }] })
    // Stops reading from the network, as a phone does whose screen is off.
    ;(stalled.socket.io.engine.transport as unknown as { ws: { pause(): void } }).ws.pause()
    const long = [...Array(300).keys()].map(i => fact(`g/a/score/ball-${i}/1/1/card`, 4))
    for (let i = 0; i < 600; i++) await line.ask('push', { ops: [alder.op(long, { at: i })] })
    expect(await line.ask('pull', { feed: 'g/a', after: 601 })).toMatchObject({ kind: 'pulled', part: { ops: [] } })
    const own = tellsOf(line.heard).at(-1)?.upTo
    expect(own).toBe(601)
    ;(stalled.socket.io.engine.transport as unknown as { ws: { resume(): void } }).ws.resume()
    await until('it is gone', () => !stalled.socket.connected)
  })
})
