import { describe, expect, it } from 'vitest'
import { retainEveryMs, startRetention } from '#server/watch/retention.ts'
import { fact, makePhone } from '#tests/server/support/phone.ts'
import { openRoom } from '#tests/server/support/room.ts'
import { makeLog } from '#tests/server/support/watch.ts'

const dayMs = 86_400_000

async function setUp(days: number) {
  const alder = makePhone('alder')
  const setup = await openRoom(alder.hello.log)
  await setup.push(alder, alder.op([alder.keyFact('desk')]))
  const { lines, logger } = makeLog()
  let steps = 0
  const failed = (error: unknown) => {
    throw error
  }
  const end = startRetention({ room: setup.room, clock: setup.clock, days, logger, steps: () => steps, failed })
  /** So many hours, an hour at a time. */
  const hours = async (count: number) => {
    for (let hour = 0; hour < count; hour++) await setup.clock.pass(retainEveryMs)
  }
  const step = () => void steps++
  return { ...setup, alder, lines, hours, step, end, head: () => setup.store.headOf(alder.hello.log) }
}

describe('retention', () => {
  it('deletes an outing in which nothing was written for so many days, and says so', async () => {
    const { hours, head, lines, alder, follow } = await setUp(2)
    const link = await follow(alder, 'all')
    await hours(48)
    expect(await head()).toMatchObject({ seq: 1 })
    await hours(1)
    expect(await head()).toBe('deleted')
    expect(link.partings).toEqual(['deleted'])
    expect(lines).toEqual([
      {
        level: 'warn',
        fields: { log: alder.hello.log },
        line: 'Deleted an outing in which nothing was written for 2 days (RETENTION_DAYS).',
      },
    ])
  })

  it('counts from the last that was written', async () => {
    const { hours, head, push, alder } = await setUp(2)
    await hours(47)
    await push(alder, alder.op([fact('title', 'Quillmoor')]))
    await hours(48)
    expect(await head()).toMatchObject({ seq: 2 })
    await hours(2)
    expect(await head()).toBe('deleted')
  })

  it('is off with 0 days', async () => {
    const { clock, head } = await setUp(0)
    await clock.pass(36_500 * dayMs)
    expect(await head()).toMatchObject({ seq: 1 })
  })

  it('deletes nothing right after the start, nor in an hour in which the clock was put', async () => {
    const { clock, head, step } = await setUp(2)
    await clock.pass(retainEveryMs - 1)
    step()
    await clock.pass(365 * dayMs)
    expect(await head()).toMatchObject({ seq: 1 })
    await clock.pass(retainEveryMs)
    expect(await head()).toBe('deleted')
  })

  it('ends with the server', async () => {
    const { clock, head, end } = await setUp(2)
    end()
    await clock.pass(365 * dayMs)
    expect(await head()).toMatchObject({ seq: 1 })
  })
})
