import { writeFileSync } from 'node:fs'
import { type AddressInfo, createServer } from 'node:net'
import { join } from 'node:path'
import { describe, expect, it, onTestFinished } from 'vitest'
import type { Verdict } from '#shared/messages/verdict.ts'
import { connect, type Line, until } from './support/app.ts'
import { makeEntry } from './support/entry.ts'
import { makeFolder } from './support/folder.ts'
import { inviteFact, makeInvite, makePhone, type Phone, score } from './support/phone.ts'
import { startServer, urlOf } from './support/process.ts'
import { breakPages, openStore } from './support/store.ts'

const invite = makeInvite('d', 'desk')

interface Pushed {
  readonly verdicts: readonly Verdict[]
}

/** Pushes one op after another until the line breaks; gives back which were acknowledged. */
async function pushUntilBroken(line: Line, phone: Phone, acknowledged: Map<string, number>): Promise<void> {
  for (let hole = 0; line.socket.connected; hole++) {
    const text = phone.op([score('a', 4, (hole % 18) + 1, phone.device)])
    const answer = (await line.ask('push', { ops: [text] }).catch(() => null)) as Pushed | null
    const [verdict] = answer?.verdicts ?? []
    if (verdict?.kind === 'stored') acknowledged.set(text, verdict.seq)
  }
}

async function joinAll(url: string): Promise<{ lines: Line[]; phones: Phone[] }> {
  const phones = [makePhone('alder'), ...['birch', 'cedar', 'fir'].map(name => makePhone(name, invite))]
  const lines = await Promise.all(phones.map(phone => connect(url, phone)))
  for (const [index, phone] of phones.entries()) {
    const more = index === 0 ? [inviteFact(invite)] : []
    await lines[index]?.ask('push', { ops: [phone.op([phone.keyFact('desk'), ...more])] })
  }
  return { lines, phones }
}

async function readAll(url: string, phone: Phone): Promise<[number, string][]> {
  const line = await connect(url, phone)
  const rows: [number, string][] = []
  for (let more = true, after = 0; more; ) {
    const { part } = (await line.ask('pull', { feed: 'all', after })) as {
      part: { ops: [number, string][]; upTo: number; more: boolean }
    }
    rows.push(...part.ops)
    after = part.upTo
    more = part.more
  }
  return rows
}

describe('the server’s process', () => {
  it('killed under load has every op that it acknowledged, once, at its sequence', async () => {
    const DATA_DIR = makeFolder()
    const acknowledged = new Map<string, number>()
    let phones: Phone[] = []
    for (let round = 0; round < 3; round++) {
      const server = startServer({ PORT: '0', DATA_DIR })
      const url = await urlOf(server)
      const joined = round === 0 ? await joinAll(url) : null
      phones = joined?.phones ?? phones
      const lines = joined?.lines ?? (await Promise.all(phones.map(phone => connect(url, phone))))
      const before = acknowledged.size
      const pushing = phones.map((phone, index) => pushUntilBroken(lines[index] as Line, phone, acknowledged))
      await until('enough is acknowledged', () => acknowledged.size > before + 100)
      server.child.kill('SIGKILL')
      await server.ended
      for (const { socket } of lines) socket.close()
      await Promise.all(pushing)
    }
    const rows = await readAll(await urlOf(startServer({ PORT: '0', DATA_DIR })), phones[0] as Phone)
    expect(rows.map(([seq]) => seq)).toEqual(rows.map((_, index) => index + 1))
    expect(new Set(rows.map(([, text]) => text)).size).toBe(rows.length)
    const held = new Map(rows.map(([seq, text]) => [text, seq]))
    expect([...acknowledged].filter(([text, seq]) => held.get(text) !== seq)).toEqual([])
  })

  it('told to end under load tells its links, ends with 0 within 5 s, and has what it acknowledged', async () => {
    const DATA_DIR = makeFolder()
    const acknowledged = new Map<string, number>()
    const server = startServer({ PORT: '0', DATA_DIR })
    const { lines, phones } = await joinAll(await urlOf(server))
    const pushing = phones.map((phone, index) => pushUntilBroken(lines[index] as Line, phone, acknowledged))
    await until('enough is acknowledged', () => acknowledged.size > 50)
    const startedAt = performance.now()
    server.child.kill('SIGTERM')
    server.child.kill('SIGINT')
    expect(await server.ended).toBe(0)
    expect(performance.now() - startedAt).toBeLessThan(5_000)
    await Promise.all(pushing)
    for (const { heard } of lines) expect(heard.at(-1)).toEqual({ event: 'parting', message: { why: 'restart' } })
    const rows = await readAll(await urlOf(startServer({ PORT: '0', DATA_DIR })), phones[0] as Phone)
    const held = new Map(rows.map(([seq, text]) => [text, seq]))
    expect([...acknowledged].filter(([text, seq]) => held.get(text) !== seq)).toEqual([])
  })

  it('leaves a running one unharmed and takes the folder over once that one is dead', async () => {
    const DATA_DIR = makeFolder()
    const first = startServer({ PORT: '0', DATA_DIR })
    const url = await urlOf(first)
    const second = startServer({ PORT: '0', DATA_DIR })
    expect(await second.ended).toBe(1)
    expect(second.said.err).toBe(`Another server (process ${first.child.pid}) uses the data folder ${DATA_DIR}.\n`)
    expect((await fetch(`${url}/healthz`)).status).toBe(200)
    first.child.kill('SIGKILL')
    await first.ended
    await expect(urlOf(startServer({ PORT: '0', DATA_DIR }))).resolves.toMatch(/^http/)
  })
})

describe('a server that cannot start', () => {
  const file = () => {
    const path = join(makeFolder(), 'file')
    writeFileSync(path, '')
    return path
  }
  const busyPort = async () => {
    const other = createServer()
    onTestFinished(() => void other.close())
    await new Promise<void>(resolve => other.listen(0, '127.0.0.1', resolve))
    return String((other.address() as AddressInfo).port)
  }

  it.each([
    ['a busy port', async () => ({ PORT: await busyPort(), DATA_DIR: makeFolder() }), /^Port \d+ is busy; .*\.\n$/],
    [
      'a folder that cannot be written',
      async () => ({ DATA_DIR: `${file()}/data` }),
      /^The data folder .* cannot be written \(ENOTDIR\); .*\.\n$/,
    ],
    [
      'a damaged database',
      async () => {
        const DATA_DIR = makeFolder()
        const store = await openStore(DATA_DIR)
        for (let n = 1; n <= 100; n++) await store.append(makeEntry(n, { creates: n === 1, text: `${n}`.repeat(200) }))
        await store.close()
        breakPages(`${DATA_DIR}/six-threes.db`)
        return { DATA_DIR }
      },
      /^The database .* is damaged \(.*\)\. Nothing was changed\. .* npm run restore -- FILE; .*\.\n$/,
    ],
    [
      'a restore that was cut short',
      async () => {
        const DATA_DIR = makeFolder()
        writeFileSync(join(DATA_DIR, 'restored.db'), '')
        return { DATA_DIR }
      },
      /^A restore into .* was cut short; run npm run restore -- FILE again\.\n$/,
    ],
    ['a wrong setting', async () => ({ PORT: 'eighty' }), /^PORT must be .*"eighty"\.\n$/],
    [
      'a certificate that is not there',
      async () => ({ TLS_CERT: '/nothing', TLS_KEY: '/nothing' }),
      /^TLS_CERT cannot be read: .*\.\n$/,
    ],
    [
      'a certificate that is none',
      async () => ({ TLS_CERT: 'package.json', TLS_KEY: 'package.json' }),
      /^TLS_CERT and TLS_KEY do not hold a certificate and its key: .*\.\n$/,
    ],
    [
      'a database that is not supported',
      async () => ({ DATABASE_URL: 'postgres://db' }),
      /^DATABASE_URL is not supported yet; .*\.\n$/,
    ],
  ])('for %s says so in one line and ends with 1', async (_, envOf, line) => {
    const server = startServer({ PORT: '0', DATA_DIR: makeFolder(), ...(await envOf()) })
    expect(await server.ended).toBe(1)
    expect(server.said.err).toMatch(line)
    expect(server.said.err.trim().split('\n')).toHaveLength(1)
    expect(server.said.out).toBe('')
  })
})
