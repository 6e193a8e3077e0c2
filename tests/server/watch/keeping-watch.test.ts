import { describe, expect, it } from 'vitest'
import { type Clock, systemClock } from '#server/live/clock.ts'
import { lookEveryMs } from '#server/watch/watch.ts'
import { connect, startApp } from '#tests/server/support/app.ts'
import { makePhone, score } from '#tests/server/support/phone.ts'
import { openDatabase } from '#tests/server/support/store.ts'
import { makeMachine } from '#tests/server/support/watch.ts'

/** The system's clock, with the next look of the watch in the test's own hand. */
function makeLookClock() {
  let look = () => {}
  const clock: Clock = {
    ...systemClock,
    after(delayMs, work) {
      if (delayMs !== lookEveryMs) return systemClock.after(delayMs, work)
      look = work
      return () => {}
    },
  }
  return { clock, look: () => look() }
}

const alarmsIn = (lines: readonly string[]) =>
  lines.map(line => JSON.parse(line)).filter(({ alarm, level }) => alarm !== undefined && level >= 40)

describe('the server’s log', () => {
  it('says at the start what is wrong with the machine', async () => {
    const machine = makeMachine()
    machine.freeBytes = 100e6
    const { lines } = await startApp({ machine })
    expect(alarmsIn(lines)).toMatchObject([{ alarm: 'disk-low', level: 40 }])
  })

  it('says when another program holds the database, once, however many phones try, and when it is over', async () => {
    const { clock, look } = makeLookClock()
    const app = await startApp({ machine: makeMachine(), clock })
    const alder = makePhone('alder')
    const line = await connect(app.url, alder)
    await line.ask('push', { ops: [alder.op([alder.keyFact('desk')])] })
    const other = await openDatabase(`${app.dataFolder}/six-threes.db`)
    other.exec('BEGIN IMMEDIATE')
    for (let again = 0; again < 3; again++) {
      const answer = await line.ask('push', { ops: [alder.op([score('a', 4, again + 1)], { scope: 'a' as never })] })
      expect(answer).toEqual({ verdicts: [{ kind: 'later', reason: 'database' }] })
      look()
      await new Promise(resolve => setImmediate(resolve))
    }
    expect(alarmsIn(app.lines)).toMatchObject([{ alarm: 'database-trouble', level: 50 }])
    expect(app.lines.filter(text => text.includes('"msg":"failed"'))).toHaveLength(1)
    other.exec('ROLLBACK')
    await line.ask('push', { ops: [alder.op([score('a', 4, 9)], { scope: 'a' as never })] })
    look()
    await new Promise(resolve => setImmediate(resolve))
    expect(app.lines.at(-1)).toContain('database-trouble is over')
  })
})
