import { once } from 'node:events'
import { connect as connectTcp, type Socket } from 'node:net'
import { describe, expect, it, onTestFinished } from 'vitest'
import { connect, openLine, type RunningApp, startApp } from '#tests/server/support/app.ts'
import { inviteFact, makeInvite, makePhone } from '#tests/server/support/phone.ts'

const invite = makeInvite('all', 'desk')

async function startOuting() {
  const app = await startApp({ metricsPort: 0 })
  const alder = makePhone('alder')
  const line = await connect(app.url, alder)
  await line.ask('push', { ops: [alder.op([alder.keyFact('desk'), inviteFact(invite)])] })
  return { app, line }
}

async function gaugeOf({ metricsPort }: RunningApp, name: string): Promise<number> {
  const text = await (await fetch(`http://127.0.0.1:${metricsPort}/metrics`)).text()
  return Number(new RegExp(`^sixthrees_${name} (\\S+)$`, 'm').exec(text)?.[1])
}

/** Waits until the gauge says so. */
async function whenGauge(app: RunningApp, name: string, value: number): Promise<void> {
  const giveUpAt = Date.now() + 20_000
  while ((await gaugeOf(app, name)) !== value) {
    if (Date.now() > giveUpAt) throw new Error(`${name} never ${value}`)
    await new Promise(resolve => setTimeout(resolve, 50))
  }
}

/** An opened web socket that never says who it is. */
async function openSilent(port: number): Promise<Socket> {
  const socket = connectTcp(port, '127.0.0.1')
  onTestFinished(() => void socket.destroy())
  socket.on('error', () => {})
  const head = [
    'GET /socket.io/?EIO=4&transport=websocket HTTP/1.1',
    `Host: 127.0.0.1:${port}`,
    'Connection: Upgrade',
    'Upgrade: websocket',
    'Sec-WebSocket-Version: 13',
    'Sec-WebSocket-Key: MDEyMzQ1Njc4OWFiY2RlZg==',
  ]
  socket.write(`${head.join('\r\n')}\r\n\r\n`)
  await once(socket, 'data')
  return socket
}

describe('phones that come and go', () => {
  it('leave no link and no open outing behind, also where they go before they are answered', async () => {
    const { app, line } = await startOuting()
    for (let round = 0; round < 10; round++) {
      const lines = Array.from({ length: 30 }, (_, n) =>
        openLine(app.url, makePhone(`phone-${round}-${n}`, invite).hello),
      )
      await Promise.all(
        lines.map(async ({ socket, ask }, n) => {
          await new Promise(resolve => socket.once('connect', () => resolve(null)))
          const followed = ask('follow', { era: null, feeds: [{ feed: 'all', after: 0 }] }).catch(() => null)
          if (n % 2) await followed
          socket.close()
        }),
      )
    }
    await whenGauge(app, 'links', 1)
    await whenGauge(app, 'logs_open', 0)
    expect(await line.ask('pull', { feed: 'all', after: 0 })).toMatchObject({ kind: 'pulled' })
  })
})

describe('sockets that never say who they are', () => {
  it('keep nobody out, and are links no more after ten seconds', async () => {
    const { app } = await startOuting()
    await Promise.all(Array.from({ length: 300 }, () => openSilent(app.port)))
    expect(await gaugeOf(app, 'links')).toBe(301)
    const startedAt = performance.now()
    const birch = makePhone('birch', invite)
    const line = await connect(app.url, birch)
    expect(await line.ask('push', { ops: [birch.op([birch.keyFact('desk')])] })).toMatchObject({
      verdicts: [{ kind: 'stored' }],
    })
    expect(performance.now() - startedAt).toBeLessThan(2_000)
    await whenGauge(app, 'links', 2)
  })
})
