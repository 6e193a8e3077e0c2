import { readdirSync, readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { connect } from './support/app.ts'
import { makeFolder } from './support/folder.ts'
import { inviteFact, makeInvite, makePhone, type Phone, score } from './support/phone.ts'
import { startServer, urlOf } from './support/process.ts'

const scorer = makeInvite('s', 'scorer', 'a')
const atOnce = 25
/** So many that each says less in the whole day than a server lets one say in a second, however quick the machine. */
const names = Array.from({ length: 10 * atOnce }, (_, n) => `phone-${n}`)

/** As the system counts them: a file, a socket or a timer that is never let go of stays in sight. */
const handlesOf = (pid: number): number => readdirSync(`/proc/${pid}/fd`).length
const memoryOf = (pid: number): number =>
  Number(/^VmRSS:\s+(\d+) kB$/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1])

/** A phone comes back from the pocket, hears what it missed, puts in a score and goes. */
async function comeAndGo(url: string, phone: Phone, hole: number): Promise<void> {
  const line = await connect(url, phone)
  await line.ask('follow', { era: null, feeds: [{ feed: 'all', after: 0 }] })
  const op = phone.op([score('a', 4, 1 + (hole % 18))], { scope: 'a' as never })
  expect(await line.ask('push', { ops: [op] })).toMatchObject({ verdicts: [{ kind: 'stored' }] })
  line.socket.close()
}

it.skipIf(process.platform !== 'linux')(
  'a server to which phones come back two thousand times keeps none of their handles, and hardly grows',
  async () => {
    const server = startServer({ PORT: '0', DATA_DIR: makeFolder() })
    const url = await urlOf(server)
    const pid = server.child.pid ?? 0
    const alder = makePhone('alder')
    const desk = await connect(url, alder)
    await desk.ask('push', { ops: [alder.op([alder.keyFact('desk'), inviteFact(scorer)])] })
    // With one phone in; what the machine opens for itself on the way is a few.
    const most = handlesOf(pid) + 4
    const phones = names.map(name => makePhone(name, scorer))
    for (const phone of phones) {
      const line = await connect(url, phone)
      await line.ask('push', { ops: [phone.op([phone.keyFact('scorer', 'a')])] })
      line.socket.close()
    }
    const rounds = async (count: number): Promise<void> => {
      for (let n = 0; n < count; n++) {
        const first = (n * atOnce) % phones.length
        await Promise.all(phones.slice(first, first + atOnce).map(phone => comeAndGo(url, phone, n)))
      }
    }
    await rounds(20)
    const memory = memoryOf(pid)
    await rounds(80)
    // The last of them are gone once the server has noticed.
    await expect.poll(() => handlesOf(pid), { timeout: 15_000 }).toBeLessThanOrEqual(most)
    expect(memoryOf(pid)).toBeLessThan(memory * 1.3)
  },
)
