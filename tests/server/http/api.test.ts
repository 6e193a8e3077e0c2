import { describe, expect, it } from 'vitest'
import { protocolVersion } from '#shared/protocol.ts'
import { headersOf, openLine, type RunningApp, startApp } from '#tests/server/support/app.ts'
import { fact, inviteFact, makeInvite, makePhone, type Phone, score } from '#tests/server/support/phone.ts'

const invite = makeInvite('d', 'desk')
const logUrl = ({ url }: RunningApp, what: string) => `${url}/api/logs/quillmoor/${what}`

const post = (url: string, phone: Phone, body: unknown, headers: Record<string, string> = {}) =>
  fetch(url, {
    method: 'POST',
    headers: { ...headersOf(phone), 'content-type': 'application/json', ...headers },
    body: typeof body === 'string' ? body : JSON.stringify(body),
  })

async function startRound() {
  const app = await startApp()
  const alder = makePhone('alder')
  const start = alder.op([alder.keyFact('desk'), inviteFact(invite)])
  const answer = await post(logUrl(app, 'ops'), alder, { ops: [start] })
  expect(await answer.json()).toEqual({ verdicts: [{ kind: 'stored', seq: 1 }] })
  return { app, alder, start }
}

describe('ops by HTTP', () => {
  it('are pushed, pulled and exchanged as over a socket', async () => {
    const { app, alder, start } = await startRound()
    await post(logUrl(app, 'ops'), alder, { ops: [alder.op([score('a', 4)])] })
    const pulled = await fetch(logUrl(app, 'ops?feed=all&after=1'), { headers: headersOf(alder) })
    expect(await pulled.json()).toMatchObject({ kind: 'pulled', part: { feed: 'all', upTo: 2, more: false } })
    const exchanged = await post(logUrl(app, 'exchange'), alder, { feed: 'all', here: [['alder', [[2, 2]]]] })
    const { part, here } = (await exchanged.json()) as { part: { ops: [number, string][] }; here: unknown }
    expect(part.ops.map(([seq, text]) => [seq, text])).toEqual([[1, start]])
    expect(here).toEqual([['alder', [[1, 2]]]])
  })

  it('let a guest in by the invite in its header', async () => {
    const { app } = await startRound()
    const birch = makePhone('birch', invite)
    const pulled = await fetch(logUrl(app, 'ops?feed=all&after=0'), { headers: headersOf(birch) })
    expect(await pulled.json()).toMatchObject({ kind: 'pulled' })
    const joined = await post(logUrl(app, 'ops'), birch, { ops: [birch.op([birch.keyFact('desk')])] })
    expect(await joined.json()).toEqual({ verdicts: [{ kind: 'stored', seq: 2 }] })
  })

  it('answer a stranger why, with status 200', async () => {
    const { app } = await startRound()
    const pulled = await fetch(logUrl(app, 'ops?feed=all&after=0'), { headers: headersOf(makePhone('rowan')) })
    expect(pulled.status).toBe(200)
    expect(await pulled.json()).toEqual({ kind: 'stranger', why: 'key unknown' })
  })

  it.each([
    ['no authorization', {}, 'authorization'],
    ['a device that is no id', { authorization: `Bearer A:${'k'.repeat(22)}` }, 'device'],
    ['a short key', { authorization: 'Bearer alder:short' }, 'key'],
    ['an invite of no shape', { authorization: `Bearer alder:${'k'.repeat(22)}`, 'x-invite': 'D:' }, 'invite.id'],
  ])('with %s are answered by the name of the field', async (_, headers, path) => {
    const { app } = await startRound()
    const answer = await fetch(logUrl(app, 'ops?feed=all&after=0'), { headers: headers as Record<string, string> })
    expect([answer.status, await answer.json()]).toEqual([400, { kind: 'fault', code: 'wrong shape', path }])
  })

  it('with a body that is no JSON, too large or of another shape are answered so', async () => {
    const { app, alder } = await startRound()
    const faults = await Promise.all(
      ['{', JSON.stringify({ ops: ['x'.repeat(1_100_000)] }), '[]', '{"ops":[1]}'].map(async body => {
        const answer = await post(logUrl(app, 'ops'), alder, body)
        const { code, path } = (await answer.json()) as { code: string; path: string }
        return [answer.status, code, path]
      }),
    )
    expect(faults).toEqual([
      [400, 'not json', ''],
      [413, 'too large', ''],
      [400, 'wrong shape', ''],
      [400, 'wrong shape', 'ops[0]'],
    ])
  })

  it('name the field of a query that is wrong', async () => {
    const { app, alder } = await startRound()
    const fieldOf = async (query: string) => {
      const answer = await fetch(logUrl(app, `ops?${query}`), { headers: headersOf(alder) })
      return ((await answer.json()) as { path: string }).path
    }
    expect(await fieldOf('feed=all')).toBe('after')
    expect(await fieldOf('feed=all&after=-1')).toBe('after')
    expect(await fieldOf('feed=nothing&after=0')).toBe('feed')
    expect(await fieldOf('feed=all&after=0&extra=1')).toBe('extra')
  })
})

describe('the snapshot', () => {
  it('comes with a tag, compressed, and not again while nothing has changed', async () => {
    const { app, alder } = await startRound()
    await post(logUrl(app, 'ops'), alder, { ops: [alder.op([fact('title', 'Quillmoor')])] })
    const headers = { ...headersOf(alder), 'accept-encoding': 'gzip' }
    const first = await fetch(logUrl(app, 'snapshot?feed=all'), { headers })
    const { era, upTo, snapshot } = (await first.json()) as { era: string; upTo: number; snapshot: { keys: string[] } }
    const tag = first.headers.get('etag') ?? ''
    expect([upTo, tag, snapshot.keys]).toEqual([2, `"${era}-2"`, ['invite/d', 'key/alder', 'title']])
    expect(first.headers.get('cache-control')).toBe('private, no-cache')
    const again = await fetch(logUrl(app, 'snapshot?feed=all'), { headers: { ...headers, 'if-none-match': tag } })
    expect([again.status, await again.text()]).toEqual([304, ''])
    await post(logUrl(app, 'ops'), alder, { ops: [alder.op([score('a', 4)])] })
    const changed = await fetch(logUrl(app, 'snapshot?feed=all'), { headers: { ...headers, 'if-none-match': tag } })
    expect([changed.status, changed.headers.get('etag')]).toEqual([200, `"${era}-3"`])
  })

  it('of a large field is compressed', async () => {
    const { app, alder } = await startRound()
    const ops = Array.from({ length: 60 }, (_, hole) => alder.op([score('a', 4, (hole % 18) + 1, `ball-${hole}`)]))
    await post(logUrl(app, 'ops'), alder, { ops })
    const answer = await fetch(logUrl(app, 'snapshot'), { headers: { ...headersOf(alder), 'accept-encoding': 'gzip' } })
    expect(answer.headers.get('content-encoding')).toBe('gzip')
  })

  it('is nobody else’s, and of no other feed', async () => {
    const { app, alder } = await startRound()
    const stranger = await fetch(logUrl(app, 'snapshot?feed=all'), { headers: headersOf(makePhone('rowan')) })
    expect(await stranger.json()).toEqual({ kind: 'stranger', why: 'key unknown' })
    const group = await fetch(logUrl(app, 'snapshot?feed=g/a'), { headers: headersOf(alder) })
    expect([group.status, await group.json()]).toEqual([400, { kind: 'fault', code: 'wrong shape', path: 'feed' }])
  })
})

describe('the server', () => {
  it('says what it is and that it is well', async () => {
    const app = await startApp()
    expect(await (await fetch(`${app.url}/api/probe`)).json()).toEqual({
      product: 'six-threes',
      protocol: protocolVersion,
      outsideUrl: null,
    })
    const health = await fetch(`${app.url}/healthz`)
    expect([health.status, await health.json()]).toEqual([200, { status: 'ok', uptimeS: expect.any(Number) }])
    expect((await fetch(`${app.url}/api/nothing`)).status).toBe(404)
  })

  it('lets no other site’s page write', async () => {
    const { app, alder } = await startRound()
    const body = { ops: [alder.op([score('a', 4)])] }
    const foreign = await post(logUrl(app, 'ops'), alder, body, { origin: 'https://elsewhere.example' })
    expect([foreign.status, await foreign.json()]).toEqual([
      403,
      { kind: 'fault', code: 'wrong shape', path: 'origin' },
    ])
    const own = await post(logUrl(app, 'ops'), alder, body, { origin: app.url })
    expect(await own.json()).toEqual({ verdicts: [{ kind: 'stored', seq: 2 }] })
  })

  it('logs a line a request and no secret in any', async () => {
    const { app, alder } = await startRound()
    await fetch(logUrl(app, `ops?feed=all&after=0&key=${alder.secret}`), {
      headers: headersOf(makePhone('birch', invite)),
    })
    openLine(app.url, alder.hello)
    openLine(app.url, { ...alder.hello, key: 'short' })
    await fetch(`${app.url}/nothing?invite=${invite.secret}`)
    await app.close()
    const text = app.lines.join('')
    expect(text).toContain('"path":"/api/logs/quillmoor/ops"')
    expect(text).not.toContain(alder.secret)
    expect(text).not.toContain(invite.secret)
    expect(text).not.toContain('key-secret-of-birch')
  })
})
