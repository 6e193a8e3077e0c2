import { describe, expect, it } from 'vitest'
import type { StoreTrouble } from '#server/store/store.ts'
import { type AlarmKind, alarmKinds, createAlarms } from '#server/watch/alarms.ts'
import { createWatch, lookEveryMs } from '#server/watch/watch.ts'
import { makeClock } from '#tests/server/support/room.ts'
import { type FakeMachine, makeLog, makeMachine } from '#tests/server/support/watch.ts'

const hourMs = 3_600_000

interface Condition {
  readonly machine: FakeMachine
  trouble: StoreTrouble | null
}

function setUp(backupAlarmHours = 48) {
  const condition: Condition = { machine: makeMachine(), trouble: null }
  const { machine } = condition
  const clock = makeClock()
  const { lines, logger } = makeLog()
  const failures: unknown[] = []
  const store = { trouble: async () => condition.trouble }
  const alarms = createAlarms(logger, machine.steadyMs)
  const watch = createWatch({ machine, store, alarms, clock, backupAlarmHours, failed: error => failures.push(error) })
  const kinds = () => lines.flatMap(({ fields, level }) => (level === 'info' ? [] : [fields.alarm as AlarmKind]))
  return { condition, machine, clock, lines, watch, kinds, failures }
}

/** What brings each alarm, what it must say to do, and how loud it is. */
const conditions: Readonly<Record<AlarmKind, readonly [make: (at: Condition) => void, level: string, says: RegExp]>> = {
  'disk-low': [
    ({ machine }) => void Object.assign(machine, { freeBytes: 312e6 }),
    'warn',
    /has 312 MB left\. Free some space/,
  ],
  'disk-full': [
    at => void Object.assign(at, { trouble: 'disk' }),
    'error',
    /takes nothing.*\. Free some space now; phones keep/,
  ],
  'database-trouble': [
    at => void Object.assign(at, { trouble: 'database' }),
    'error',
    /does not take.*End any other program/,
  ],
  'backup-old': [
    ({ machine }) => void Object.assign(machine, { backupAt: machine.wall - 61.5 * hourMs }),
    'warn',
    /older than 61 hours \(BACKUP_ALARM_HOURS is 48\)\. Run npm run backup/,
  ],
  'loop-blocked': [
    ({ machine }) => void Object.assign(machine, { loop: { p99Ms: 30, maxMs: 2_440 } }),
    'warn',
    /still for 2\.4 s.*Look for/,
  ],
  'clock-stepped': [({ machine }) => void machine.pass(hourMs, 0), 'warn', /put forward by 3600 s.*timedatectl/],
}

describe('an alarm', () => {
  it('is not raised while all is well', async () => {
    const { watch, lines, machine } = setUp()
    await watch.look()
    machine.pass(10_000)
    await watch.look()
    expect(lines).toEqual([])
  })

  it.each(alarmKinds)('%s is raised by its condition alone, and says what to do', async kind => {
    const { watch, lines, kinds, condition } = setUp()
    const [make, level, says] = conditions[kind]
    make(condition)
    await watch.look()
    expect(kinds()).toEqual([kind])
    expect(lines[0]).toMatchObject({ level, line: expect.stringMatching(says) })
    expect(lines[0]?.line).toMatch(/\.$/)
  })

  it.each(['disk-low', 'disk-full', 'database-trouble', 'backup-old'] as const)(
    '%s is said once an hour while it lasts, and once when it is over',
    async kind => {
      const { watch, kinds, lines, condition, machine } = setUp()
      conditions[kind][0](condition)
      for (let looks = 0; looks < 2 * 360; looks++) {
        await watch.look()
        machine.pass(lookEveryMs)
      }
      expect(kinds()).toEqual([kind, kind])
      Object.assign(machine, { freeBytes: 20e9, backupAt: machine.wall })
      condition.trouble = null
      await watch.look()
      await watch.look()
      expect(lines.filter(({ level }) => level === 'info')).toMatchObject([{ fields: { alarm: kind } }])
    },
  )

  it('that was over and comes back is said at once', async () => {
    const { watch, kinds, lines, condition, machine } = setUp()
    for (const trouble of ['disk', null, 'disk'] as const) {
      condition.trouble = trouble
      await watch.look()
      machine.pass(lookEveryMs)
    }
    expect(kinds()).toEqual(['disk-full', 'disk-full'])
    expect(lines.map(({ level }) => level)).toEqual(['error', 'info', 'error'])
  })

  it.each(['loop-blocked', 'clock-stepped'] as const)('%s does not flood when it comes again and again', async kind => {
    const { watch, kinds, condition, machine } = setUp()
    for (let looks = 0; looks < 100; looks++) {
      conditions[kind][0](condition)
      await watch.look()
      machine.pass(lookEveryMs)
    }
    expect(kinds().filter(raised => raised === kind)).toEqual([kind])
  })

  it('of a clock put back says so, and a clock that drifts by little is none', async () => {
    const { watch, lines, machine } = setUp()
    machine.wall -= 4_000
    await watch.look()
    expect(lines).toEqual([])
    machine.wall -= 60_000
    await watch.look()
    expect(lines).toMatchObject([{ line: expect.stringMatching(/put back by 60 s/) }])
    expect(watch.steps()).toBe(1)
  })

  it('of no backup at all counts from when the folder was first used', async () => {
    const { watch, lines, machine } = setUp()
    Object.assign(machine, { backupAt: null, usedAt: machine.wall - 47 * hourMs })
    await watch.look()
    expect(lines).toEqual([])
    machine.pass(2 * hourMs)
    await watch.look()
    expect(lines).toMatchObject([{ line: expect.stringMatching(/^There has been no backup for 49 hours/) }])
  })

  it('of an old backup is off with 0 hours', async () => {
    const { watch, lines, machine } = setUp(0)
    machine.backupAt = 0
    await watch.look()
    expect(lines).toEqual([])
  })

  it('comes by itself, every ten seconds, and never again once the watch has ended', async () => {
    const { watch, clock, machine, condition, kinds } = setUp()
    await clock.pass(lookEveryMs)
    condition.trouble = 'disk'
    await clock.pass(lookEveryMs)
    expect(kinds()).toEqual(['disk-full'])
    expect(watch.latest()).toMatchObject({ diskFreeBytes: 20e9, lastBackupAt: machine.backupAt })
    watch.stop()
    machine.pass(2 * hourMs)
    await clock.pass(lookEveryMs)
    expect(kinds()).toEqual(['disk-full'])
  })

  it('that cannot be judged is a failure, and the next look comes all the same', async () => {
    const { clock, machine, failures, condition, kinds } = setUp()
    const { diskFreeBytes } = machine
    machine.diskFreeBytes = () => {
      throw new Error('gone')
    }
    await clock.pass(lookEveryMs)
    expect(failures).toHaveLength(1)
    machine.diskFreeBytes = diskFreeBytes
    condition.trouble = 'disk'
    await clock.pass(lookEveryMs)
    expect(kinds()).toEqual(['disk-full'])
  })
})
