import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { describe, expect, it, onTestFinished } from 'vitest'
import { connect, startApp } from '#tests/server/support/app.ts'
import { makePhone, score } from '#tests/server/support/phone.ts'
import { makeMachine } from '#tests/server/support/watch.ts'

const read = async (port: number | null): Promise<Map<string, number>> => {
  const answer = await fetch(`http://127.0.0.1:${port}/metrics`)
  expect(answer.headers.get('content-type')).toMatch(/^text\/plain; version=0\.0\.4/)
  const lines = (await answer.text()).split('\n').filter(line => line !== '' && !line.startsWith('#'))
  return new Map(lines.map(line => [line.slice(0, line.lastIndexOf(' ')), Number(line.slice(line.lastIndexOf(' ')))]))
}

async function setUp() {
  const app = await startApp({ metricsPort: 0, machine: makeMachine() })
  const alder = makePhone('alder')
  const line = await connect(app.url, alder)
  await line.ask('push', { ops: [alder.op([alder.keyFact('desk')])] })
  await line.ask('follow', { era: null, feeds: [{ feed: 'all', after: 0 }] })
  return { app, alder, line }
}

describe('the gauges', () => {
  it('say what the server does', async () => {
    const { app, alder, line } = await setUp()
    await line.ask('push', {
      ops: [alder.op([score('a', 4)], { scope: 'a' as never }), alder.op([score('a', 4, 2)], { scope: 'a' as never })],
    })
    const rowan = makePhone('rowan')
    await (await connect(app.url, rowan)).ask('push', { ops: [rowan.op([score('a', 5)])] })
    const gauges = await read(app.metricsPort)
    expect(gauges.get('sixthrees_links')).toBe(2)
    expect(gauges.get('sixthrees_links_refused_total{reason="address_full"}')).toBe(0)
    expect(gauges.get('sixthrees_logs_open')).toBe(1)
    expect(gauges.get('sixthrees_ops_stored_total')).toBe(3)
    expect(gauges.get('sixthrees_later_total{reason="key_unknown"}')).toBe(1)
    expect(gauges.get('sixthrees_later_total{reason="disk"}')).toBe(0)
    expect(gauges.get('sixthrees_commit_duration_seconds_count')).toBe(2)
    expect(gauges.get('sixthrees_failures_total')).toBe(0)
  })

  it('say how the machine is', async () => {
    const { app } = await setUp()
    const gauges = await read(app.metricsPort)
    expect(gauges.get('sixthrees_disk_free_bytes')).toBe(20e9)
    expect(gauges.get('sixthrees_database_log_bytes')).toBe(4e6)
    expect(gauges.get('sixthrees_event_loop_delay_p99_seconds')).toBe(0.001)
    expect(gauges.get('sixthrees_event_loop_delay_max_seconds')).toBe(0.005)
    expect(gauges.get('sixthrees_last_backup_timestamp_seconds')).toBe(Date.UTC(2026, 10, 28, 3) / 1_000)
    expect(gauges.get('sixthrees_resident_memory_bytes')).toBeGreaterThan(1e6)
  })

  it('have names by the rules of Prometheus, and no label that grows with the field', async () => {
    const { app } = await setUp()
    const text = await (await fetch(`http://127.0.0.1:${app.metricsPort}/metrics`)).text()
    const typed = [...text.matchAll(/^# TYPE (\S+) (\S+)$/gm)].map(([, name = '', type = '']) => [name, type] as const)
    expect(typed.length).toBeGreaterThan(10)
    for (const [name, type] of typed) {
      expect(name).toMatch(/^sixthrees_[a-z0-9_]+$/)
      expect([name, name.endsWith('_total')]).toEqual([name, type === 'counter'])
      expect(name).not.toMatch(/milli|_ms$|_kb$|_mb$/)
    }
    expect([...new Set([...text.matchAll(/\{(\w+)=/g)].map(([, label]) => label))].sort()).toEqual(['le', 'reason'])
    expect(text).not.toContain('quillmoor')
  })

  it('are on a port of their own: phones and watchers cannot read them', async () => {
    const { app } = await setUp()
    expect(app.metricsPort).not.toBe(app.port)
    const answer = await fetch(`${app.url}/metrics`, { headers: { accept: '*/*' } })
    expect(await answer.text()).not.toContain('sixthrees_')
    expect((await fetch(`http://127.0.0.1:${app.metricsPort}/`)).status).toBe(404)
    expect((await fetch(`http://127.0.0.1:${app.metricsPort}/metrics`, { method: 'POST' })).status).toBe(404)
  })

  it('are not served unless they are asked for, and end with the server', async () => {
    expect((await startApp()).metricsPort).toBeNull()
    const app = await startApp({ metricsPort: 0 })
    await app.close()
    await expect(fetch(`http://127.0.0.1:${app.metricsPort}/metrics`)).rejects.toThrow()
  })

  it('on a busy port end the start with a line that names the setting', async () => {
    const other = createServer()
    onTestFinished(() => void other.close())
    await new Promise<void>(resolve => other.listen(0, '127.0.0.1', resolve))
    const metricsPort = (other.address() as AddressInfo).port
    await expect(startApp({ metricsPort })).rejects.toThrow(/^METRICS_PORT \d+ cannot be used \(EADDRINUSE\)/)
  })
})
