import { describe, expect, it } from 'vitest'
import { greetingOf } from '#server/greeting.ts'
import { parseSettings } from '#server/settings.ts'

describe('the environment', () => {
  it('may be empty', () => {
    expect(parseSettings({})).toEqual({
      ok: true,
      value: {
        port: 8686,
        host: '0.0.0.0',
        dataFolder: './data',
        publicUrl: null,
        trustedHops: 0,
        tlsFiles: null,
        logLevel: 'info',
        backupAlarmHours: 48,
        retentionDays: 0,
        metricsPort: null,
        linksPerAddress: 4_000,
      },
    })
  })

  it.each([
    ['PORT', '80a'],
    ['PORT', '65536'],
    ['PORT', '-1'],
    ['TRUST_PROXY', 'true'],
    ['TRUST_PROXY', '11'],
    ['BACKUP_ALARM_HOURS', 'daily'],
    ['RETENTION_DAYS', '-1'],
    ['RETENTION_DAYS', '36501'],
    ['METRICS_PORT', '8686'],
    ['LINKS_PER_ADDRESS', '20001'],
    ['METRICS_PORT', '65536'],
    ['PUBLIC_URL', 'golf.example'],
    ['PUBLIC_URL', 'https://golf.example/round'],
    ['LOG_LEVEL', 'loud'],
    ['TLS_CERT', '/cert.pem'],
    ['TLS_KEY', '/key.pem'],
    ['DATABASE_URL', 'postgres://db'],
  ])('with %s=%s is answered in one line that names it', (name, value) => {
    const settings = parseSettings({ [name]: value })
    expect(settings.ok ? '' : settings.error).toMatch(new RegExp(`^.*${name}.*\\.$`))
  })

  it('gives the public address without its last stroke', () => {
    expect(parseSettings({ PUBLIC_URL: 'https://golf.example/' })).toMatchObject({
      value: { publicUrl: 'https://golf.example' },
    })
  })
})

describe('the greeting', () => {
  const reached = { host: '0.0.0.0', port: 8686, isTls: false, publicUrl: null }

  it('names this machine and the network, and shows a code for a phone', () => {
    const text = greetingOf(reached, ['192.0.2.7'])
    expect(text).toContain('http://localhost:8686')
    expect(text).toContain('http://192.0.2.7:8686')
    expect(text).toMatch(/[█▀▄]{10}/)
  })

  it('shows the public address where there is one, and no network for a server that listens here alone', () => {
    expect(greetingOf({ ...reached, publicUrl: 'https://golf.example' }, ['192.0.2.7'])).toContain(
      'https://golf.example',
    )
    const closed = greetingOf({ ...reached, host: '127.0.0.1' }, ['192.0.2.7'])
    expect(closed).toContain('http://127.0.0.1:8686')
    expect(closed).not.toContain('192.0.2.7')
  })
})
