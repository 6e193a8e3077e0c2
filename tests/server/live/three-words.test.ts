import { describe, expect, it } from 'vitest'
import type { AppOptions } from '#server/app.ts'
import { type Clock, systemClock } from '#server/live/clock.ts'
import { defaultLimits, networkOf } from '#server/live/limiter.ts'
import { connect, headersOf, type Line, type RunningApp, startApp, until } from '#tests/server/support/app.ts'
import { inviteFact, makeInvite, makePhone, type Phone } from '#tests/server/support/phone.ts'

const desk = makeInvite('d', 'desk')
const scorerA = makeInvite('sa', 'scorer', 'a')
const scorerB = makeInvite('sb', 'scorer', 'b')
const viewer = makeInvite('v', 'viewer')

/** The system's clock, set forward by hand. */
function makeForwardClock() {
  let ahead = 0
  const clock: Clock = { ...systemClock, now: () => Date.now() + ahead }
  const forward = (ms: number) => {
    ahead += ms
  }
  return { clock, forward }
}

async function join(url: string, phone: Phone, invite: typeof desk): Promise<Line> {
  const line = await connect(url, phone)
  await line.ask('push', { ops: [phone.op([phone.keyFact(invite.role, invite.group)])] })
  await line.ask('follow', { era: null, feeds: [{ feed: 'all', after: 0 }] })
  return line
}

/** An outing of two groups: the desk, a scorer of each, and one who watches. */
async function startOuting(changes: Partial<AppOptions> = {}) {
  const app = await startApp(changes)
  const alder = makePhone('alder')
  const start = [alder.keyFact('desk'), ...[desk, scorerA, scorerB, viewer].map(inviteFact)]
  const first = await connect(app.url, alder)
  await first.ask('push', { ops: [alder.op(start)] })
  await first.ask('follow', { era: null, feeds: [{ feed: 'all', after: 0 }] })
  const birch = await join(app.url, makePhone('birch', scorerA), scorerA)
  const cedar = await join(app.url, makePhone('cedar', scorerB), scorerB)
  const rowan = await join(app.url, makePhone('rowan', viewer), viewer)
  return { app, alder: first, birch, cedar, rowan }
}

const send = async ({ url }: RunningApp, event: 'ask' | 'wait', message: unknown) => {
  const headers = { 'content-type': 'application/json' }
  const answer = await fetch(`${url}/api/${event}`, { method: 'POST', headers, body: JSON.stringify(message) })
  return (await answer.json()) as Record<string, unknown> & { kind: string; ticket: string }
}

const wordsOf = async (line: Line, group: string | null = 'a'): Promise<string> => {
  const { spoken } = (await line.ask('words', { group })) as { spoken: { words: string[] } }
  return spoken.words.join(' ')
}

const askersOf = async (line: Line) =>
  ((await line.ask('askers', {})) as { askers: { asker: string; name: string; group: string | null }[] }).askers

const timesAsked = ({ heard }: Line): number => heard.filter(({ event }) => event === 'asked').length

describe('three words', () => {
  it('open a request that a phone of the group lets in with one tap', async () => {
    const { app, alder, birch, cedar, rowan } = await startOuting()
    const words = await wordsOf(birch)
    const { kind, ticket } = await send(app, 'ask', { words: words.toUpperCase(), name: 'Maple' })
    expect(kind).toBe('asking')
    await until('the group and the desk hear of it', () => timesAsked(alder) + timesAsked(birch) === 2)
    expect([timesAsked(cedar), timesAsked(rowan)]).toEqual([0, 0])
    expect(await send(app, 'wait', { ticket })).toEqual({ kind: 'waiting' })
    const [asker] = await askersOf(birch)
    expect(asker).toEqual({ asker: expect.any(String), name: 'Maple', group: 'a' })
    expect(await askersOf(alder)).toEqual([asker])
    expect([await askersOf(cedar), await askersOf(rowan)]).toEqual([[], []])
    const invite = { id: scorerA.id, secret: scorerA.secret }
    expect(await birch.ask('admit', { asker: asker?.asker, invite })).toEqual({ kind: 'admitted' })
    expect(await send(app, 'wait', { ticket })).toEqual({ kind: 'let in', log: 'quillmoor', invite })
    const again = { kind: 'not admitted', why: 'gone' }
    expect(await alder.ask('admit', { asker: asker?.asker, invite: null })).toEqual(again)
    const maple = makePhone('maple', scorerA)
    const line = await connect(app.url, maple)
    const joined = await line.ask('push', { ops: [maple.op([maple.keyFact('scorer', 'a')])] })
    expect(joined).toMatchObject({ verdicts: [{ kind: 'stored' }] })
  })

  it('are said to all phones of the group that have them, and to no other', async () => {
    const { alder, birch, cedar, rowan } = await startOuting()
    const words = await wordsOf(birch)
    expect(await wordsOf(alder)).toBe(words)
    const spokenTo = async (line: Line) =>
      ((await line.ask('askers', {})) as { spoken: { words: string[] }[] }).spoken.map(one => one.words.join(' '))
    expect(await Promise.all([alder, birch, cedar, rowan].map(spokenTo))).toEqual([[words], [words], [], []])
  })

  it('are refused to whoever may not let in there', async () => {
    const { app, birch, rowan } = await startOuting()
    const no = { kind: 'no words', why: 'not yours' }
    expect(await rowan.ask('words', { group: 'a' })).toEqual(no)
    expect(await birch.ask('words', { group: 'b' })).toEqual(no)
    expect(await birch.ask('words', { group: null })).toEqual(no)
    const guest = await connect(app.url, makePhone('guest', desk))
    expect(await guest.ask('words', { group: 'a' })).toEqual(no)
    const stranger = await connect(app.url, makePhone('maple'))
    expect(await stranger.ask('words', { group: 'a' })).toEqual({ kind: 'stranger', why: 'key unknown' })
    expect(await stranger.ask('askers', {})).toEqual({ kind: 'stranger', why: 'key unknown' })
  })

  it('grant nothing beyond an invite that stands and gives what they said', async () => {
    const { app, alder, birch, cedar } = await startOuting()
    const { ticket } = await send(app, 'ask', { words: await wordsOf(birch), name: 'Maple' })
    const [one] = await askersOf(birch)
    const admit = (line: Line, { id, secret }: typeof desk) =>
      line.ask('admit', { asker: one?.asker, invite: { id, secret } })
    const no = (why: string) => ({ kind: 'not admitted', why })
    expect(await admit(cedar, scorerB)).toEqual(no('not yours'))
    expect(await admit(alder, desk)).toEqual(no('not yours'))
    expect(await admit(birch, scorerB)).toEqual(no('not yours'))
    expect(await admit(birch, makeInvite('new', 'scorer', 'a'))).toEqual(no('invite unknown'))
    expect(await admit(birch, { ...scorerA, secret: 'w'.repeat(24) })).toEqual(no('invite unknown'))
    expect(await send(app, 'wait', { ticket })).toEqual({ kind: 'waiting' })
    expect(await birch.ask('admit', { asker: one?.asker, invite: null })).toEqual({ kind: 'admitted' })
    expect(await send(app, 'wait', { ticket })).toEqual({ kind: 'not let in', why: 'not now' })
  })

  it('work by HTTP alone', async () => {
    const { app } = await startOuting()
    const phone = makePhone('birch', scorerA)
    const url = `${app.url}/api/logs/quillmoor`
    const headers = { ...headersOf(phone), 'content-type': 'application/json' }
    const post = async (what: string, body: unknown) =>
      (await fetch(`${url}/${what}`, { method: 'POST', headers, body: JSON.stringify(body) })).json()
    const said = (await post('words', { group: 'a' })) as { spoken: { words: string[] } }
    const { ticket } = await send(app, 'ask', { words: said.spoken.words.join(' '), name: 'Maple' })
    const asked = await (await fetch(`${url}/askers`, { headers })).json()
    const { askers } = asked as { askers: { asker: string }[] }
    const invite = { id: scorerA.id, secret: scorerA.secret }
    expect(await post('admit', { asker: askers[0]?.asker, invite })).toEqual({ kind: 'admitted' })
    expect(await send(app, 'wait', { ticket })).toMatchObject({ kind: 'let in' })
  })

  it('that are wrong and those that are too late are answered alike', async () => {
    const { clock, forward } = makeForwardClock()
    const { app, birch } = await startOuting({ clock })
    const words = await wordsOf(birch)
    forward(600_000)
    const late = await send(app, 'ask', { words, name: 'Maple' })
    expect(late).toEqual({ kind: 'not asking', why: 'words unknown' })
    expect(await send(app, 'ask', { words: 'no such words', name: 'Maple' })).toEqual(late)
    expect(await askersOf(birch)).toEqual([])
  })

  it('open a request that is gone when nobody taps in time', async () => {
    const { clock, forward } = makeForwardClock()
    const { app, birch } = await startOuting({ clock })
    const { ticket } = await send(app, 'ask', { words: await wordsOf(birch), name: 'Maple' })
    forward(300_000)
    expect(await send(app, 'wait', { ticket })).toEqual({ kind: 'not let in', why: 'gone' })
    expect(await askersOf(birch)).toEqual([])
  })

  it('are forgotten by a server that starts again, with who asks', async () => {
    const { app, birch } = await startOuting()
    const words = await wordsOf(birch)
    const { ticket } = await send(app, 'ask', { words, name: 'Maple' })
    await app.close()
    const again = await startApp({ dataFolder: app.dataFolder })
    expect(await send(again, 'wait', { ticket })).toEqual({ kind: 'not let in', why: 'gone' })
    expect(await send(again, 'ask', { words, name: 'Maple' })).toMatchObject({ why: 'words unknown' })
    const line = await connect(again.url, makePhone('birch', scorerA))
    expect(await line.ask('askers', {})).toEqual({ kind: 'askers', spoken: [], askers: [] })
  })

  it('can be guessed so often from one address, while right ones never count', async () => {
    const { app, birch } = await startOuting({ limits: { ...defaultLimits, wrongWordsPerMinute: 3 } })
    const words = await wordsOf(birch)
    for (let n = 0; n < 5; n++) expect((await send(app, 'ask', { words, name: `Maple ${n}` })).kind).toBe('asking')
    for (let n = 0; n < 3; n++) {
      expect(await send(app, 'ask', { words: `wrong ${n}`, name: 'Guesser' })).toMatchObject({ why: 'words unknown' })
    }
    const shut = { kind: 'not asking', why: 'too many' }
    expect(await send(app, 'ask', { words: 'wrong again', name: 'Guesser' })).toEqual(shut)
    expect(await send(app, 'ask', { words, name: 'Guesser' })).toEqual(shut)
  })

  it('and secrets stand in no line of the server’s log', async () => {
    const { app, birch } = await startOuting()
    const words = await wordsOf(birch)
    const { ticket } = await send(app, 'ask', { words, name: 'Maple' })
    const [asker] = await askersOf(birch)
    await birch.ask('admit', { asker: asker?.asker, invite: { id: scorerA.id, secret: scorerA.secret } })
    await send(app, 'wait', { ticket })
    await app.close()
    const text = app.lines.join('')
    expect(text).toContain('"path":"/api/ask"')
    for (const secret of [ticket, scorerA.secret, words, 'Maple']) expect(text).not.toContain(secret)
    // Any word may be drawn, the name of a field of the log too: "level". What is said of it may not be one of them.
    const said = app.lines.flatMap(line => valuesIn(JSON.parse(line)))
    expect(said).toContain('/api/ask')
    for (const word of words.split(' ')) expect(said).not.toContain(word)
  })
})

const valuesIn = (value: unknown): unknown[] =>
  typeof value === 'object' && value !== null ? Object.values(value).flatMap(valuesIn) : [value]

describe('an address', () => {
  it.each([
    ['192.0.2.7', '192.0.2.7'],
    ['::ffff:192.0.2.7', '::ffff:192.0.2.7'],
    ['2001:db8:1:2:3:4:5:6', '2001:db8:1:2'],
    ['2001:db8:1:2::9', '2001:db8:1:2'],
  ])('%s counts as %s', (address, network) => {
    expect(networkOf(address)).toBe(network)
  })
})
