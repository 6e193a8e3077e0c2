import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { defaultLimits } from '#server/live/limiter.ts'
import { parseSettings, settingNames } from '#server/settings.ts'
import { alarmKinds } from '#server/watch/alarms.ts'
import { createGauges } from '#server/watch/gauges.ts'
import { limits } from '#shared/limits.ts'

const pathOf = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url))
const text = readFileSync(pathOf('server/README.md'), 'utf8')

/** The first cells of the table under a heading, and their rows. */
function rowsUnder(heading: string): ReadonlyMap<string, string> {
  const [, section = ''] = text.split(`\n## ${heading}\n`)
  const [own = ''] = section.split('\n## ')
  return new Map([...own.matchAll(/^\| `([^`]+)` \|(.*)\|$/gm)].map(([, name = '', rest = '']) => [name, rest]))
}

describe('server/README.md', () => {
  it('has a row for every setting that is read, and no other', () => {
    expect([...rowsUnder('Settings').keys()]).toEqual([...settingNames])
    const source = readFileSync(pathOf('server/settings.ts'), 'utf8')
    const read = [...source.matchAll(/(?:said\(|countSaid\(said, )'([A-Z_]+)'/g)].map(([, name]) => name)
    expect([...new Set(read)].sort()).toEqual([...settingNames].sort())
  })

  it('says what holds unless a figure is set', () => {
    const settings = parseSettings({})
    if (!settings.ok) throw new Error(settings.error)
    const { port, trustedHops, logLevel, backupAlarmHours, retentionDays } = settings.value
    const unless = {
      PORT: port,
      TRUST_PROXY: trustedHops,
      LOG_LEVEL: logLevel,
      BACKUP_ALARM_HOURS: backupAlarmHours,
      RETENTION_DAYS: retentionDays,
    }
    for (const [name, value] of Object.entries(unless)) {
      const cell = rowsUnder('Settings').get(name)?.split('|').at(-1)?.trim()
      expect([name, cell?.replaceAll('`', '')]).toEqual([name, String(value)])
    }
  })

  it('has a row for every alarm and every gauge', async () => {
    expect([...rowsUnder('Alarms').keys()].sort()).toEqual([...alarmKinds].sort())
    const { registry } = await createGauges({} as never)
    const gauges = registry.getMetricsAsArray().map(({ name }) => name)
    expect([...rowsUnder('Gauges').keys()]).toEqual(gauges)
  })

  it('names the limits that hold', () => {
    const figures = [limits.playersInOuting, limits.opLength, ...Object.values(defaultLimits)]
    const [, section = ''] = text.split('\n## Limits\n')
    for (const figure of figures) expect(section).toContain(figure.toLocaleString('en'))
    expect(limits.frameBytes).toBe(1_000_000)
  })
})
