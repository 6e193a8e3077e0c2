import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { formsOf, joinsOf, type Named, secretsIn } from '#tests/kit/secret-search.ts'
import { connect, headersOf, type Line } from '#tests/server/support/app.ts'
import { makeFolder } from '#tests/server/support/folder.ts'
import { fact, type Invite, inviteFact, makeInvite, makePhone, type Phone, score } from '#tests/server/support/phone.ts'
import { startServer, urlOf } from '#tests/server/support/process.ts'

const json = { 'content-type': 'application/json' }
const invites = [makeInvite('d', 'desk'), makeInvite('s', 'scorer', 'a'), makeInvite('v', 'viewer')] as const
const [desk, scorer, viewer] = invites

const secretOf = ({ device, secret }: Phone): Named<string> => ({ name: `the key of ${device}`, value: secret })

/** A small outing through a server, with everything that goes wrong on the way; what was secret, and what was said. */
async function playOuting(url: string) {
  const said: Named<string>[] = []
  const hear = async (name: string, answer: Promise<Response>): Promise<unknown> => {
    const got = await answer
    const text = await got.text()
    said.push({ name, value: `${text}\n${JSON.stringify([...got.headers])}` })
    return text.startsWith('{') ? JSON.parse(text) : null
  }
  const ask = async (line: Line, event: string, message: unknown): Promise<unknown> => {
    const answer = await line.ask(event, message)
    said.push({ name: `the answer to ${event}`, value: JSON.stringify(answer) })
    return answer
  }
  const enter = async (phone: Phone, invite: Invite): Promise<Line> => {
    const line = await connect(url, phone)
    await ask(line, 'push', { ops: [phone.op([phone.keyFact(invite.role, invite.group)])] })
    await ask(line, 'follow', { era: null, feeds: [{ feed: 'all', after: 0 }] })
    return line
  }
  const alder = makePhone('alder')
  const [birch, rowan, guest] = [makePhone('birch', scorer), makePhone('rowan', viewer), makePhone('larch', desk)]
  const first = await connect(url, alder)
  await ask(first, 'push', { ops: [alder.op([alder.keyFact('desk'), ...invites.map(inviteFact)])] })
  const second = await enter(birch, scorer)
  const third = await enter(rowan, viewer)
  await ask(second, 'push', { ops: [birch.op([score('a', 4)]), birch.op([fact('title', 'Mine')])] })
  await ask(third, 'push', { ops: [makePhone('maple').op([fact('title', 'Carried')])] })

  const { spoken } = (await second.ask('words', { group: 'a' })) as { spoken: { words: string[] } }
  const words = spoken.words
  const post = (path: string, body: unknown, headers: Record<string, string> = json) =>
    hear(
      path,
      fetch(url + path, { method: 'POST', headers, body: typeof body === 'string' ? body : JSON.stringify(body) }),
    )
  const asking = await fetch(`${url}/api/ask`, {
    method: 'POST',
    headers: json,
    body: JSON.stringify({ words: words.join(' '), name: 'Maple' }),
  })
  const { ticket } = (await asking.json()) as { ticket: string }
  const { askers } = (await second.ask('askers', {})) as { askers: { asker: string }[] }
  await ask(second, 'admit', { asker: askers[0]?.asker, invite: { id: scorer.id, secret: scorer.secret } })
  const passed = await fetch(`${url}/api/wait`, { method: 'POST', headers: json, body: JSON.stringify({ ticket }) })
  expect(await passed.json()).toMatchObject({ kind: 'let in', invite: { secret: scorer.secret } })

  // Everything by HTTP, and what is wrong: where a secret has no business, nobody may write it down either.
  const log = `${url}/api/logs/quillmoor`
  for (const phone of [alder, guest]) {
    await hear('ops', fetch(`${log}/ops?feed=all&after=0`, { headers: headersOf(phone) }))
    await hear('the board', fetch(`${log}/snapshot`, { headers: headersOf(phone) }))
    await hear('offers', fetch(`${log}/offers`, { headers: headersOf(phone) }))
    await post('/api/logs/quillmoor/exchange', { feed: 'all', here: [] }, { ...json, ...headersOf(phone) })
  }
  await hear('a query', fetch(`${log}/ops?feed=all&after=0&key=${alder.secret}`, { headers: headersOf(alder) }))
  await hear('a link whose mark was lost', fetch(`${url}/join/quillmoor/${desk.id}/${desk.secret}`))
  await hear('a link whose mark was written out', fetch(`${url}/%23/join/quillmoor/${desk.id}/${desk.secret}`))
  await hear('a link in the wrong place', fetch(`${url}/api/join/quillmoor/${desk.id}/${desk.secret}`))
  await post('/api/logs/quillmoor/ops', `{"key":"${alder.secret}"`, { ...json, ...headersOf(alder) })
  await post('/api/ask', { words: words.join(' '), secret: alder.secret })
  await post('/api/wait', `{"ticket":"${ticket}"`)
  await ask(first, 'push', { ops: [`{"key":"${alder.secret}"}`], secret: desk.secret })
  await ask(first, alder.secret, {})
  const wrong = { ...alder.hello, key: `${alder.secret}!` }
  await expect(connect(url, { ...alder, hello: wrong as typeof alder.hello })).rejects.toThrow()
  await ask(first, 'push', { ops: [alder.op([fact('void/key/birch', true), fact('void/invite/s', true)])] })
  // It is answered still, or its link is cut already.
  await ask(second, 'pull', { feed: 'all', after: 0 }).catch(() => {})
  for (const line of [first, second, third]) {
    said.push({ name: 'what was said unasked', value: JSON.stringify(line.heard) })
    line.socket.close()
  }
  const secrets = [
    ...[alder, birch, rowan, guest].map(secretOf),
    ...invites.map(({ id, secret }) => ({ name: `the secret of invite ${id}`, value: secret })),
    { name: 'the ticket', value: ticket },
    ...joinsOf(words).map(value => ({ name: 'the three words', value })),
  ]
  return { said, secrets }
}

/** Every file of a folder, byte by byte. */
const filesOf = (folder: string): Named<Buffer>[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile())
    .map(entry => ({ name: entry.name, value: readFileSync(join(entry.parentPath, entry.name)) }))

describe('a search for secrets', () => {
  const secret = 'kQ3-x_9fPz0aBcDeFgHiJg'

  it('finds one in each of its forms', () => {
    const forms = formsOf(secret)
    expect(forms.length).toBeGreaterThan(7)
    for (const { name, value } of forms) {
      const places = [{ name: 'the log', value: `before${value}after` }]
      expect(secretsIn(places, [{ name: 'it', value: secret }])).toContain(`it stands in the log, ${name}`)
    }
  })

  it('finds none where none is', () => {
    expect(
      secretsIn(
        [{ name: 'the log', value: `${secret.slice(1)} ${secret.slice(0, -1)}` }],
        [{ name: 'it', value: secret }],
      ),
    ).toEqual([])
  })
})

describe('a whole outing through a server', () => {
  it('leaves no secret in its log at the finest level, in its files while it runs and after, or in what it says', async () => {
    const folder = makeFolder()
    const server = startServer({ PORT: '0', DATA_DIR: folder, LOG_LEVEL: 'trace' })
    const { said, secrets } = await playOuting(await urlOf(server))
    const running = filesOf(folder)
    expect(running.map(({ name }) => name)).toEqual(expect.arrayContaining(['six-threes.db', 'six-threes.db-wal']))
    server.child.kill('SIGTERM')
    expect(await server.ended).toBe(0)
    const log = { name: 'the log', value: server.said.err }
    const greeting = { name: 'standard output', value: server.said.out }
    // The search looks at what is there.
    expect(log.value).toContain('"path":"/api/logs/quillmoor/ops"')
    expect(secretsIn(running, [{ name: 'a hash', value: makePhone('alder').shown.keyHash }])).not.toEqual([])
    expect(secretsIn([...running, ...filesOf(folder), log, greeting, ...said], secrets)).toEqual([])
  })
})
