import { describe, expect, it } from 'vitest'
import { blockedSockets, poorNetwork, portal, silentLoss } from './bad-network.ts'
import { expectWell } from './kit/well.ts'

describe.concurrent('phones behind a bad network', () => {
  it.each([[['up', 'down']], [['up']], [['down']]] as const)(
    'a silent loss %j ends the word live within 6 s, and all is sent once it is over',
    async ways => {
      const outcome = await silentLoss(1, ways, false)
      expectWell(outcome, 9)
      expect(outcome.notes.notLiveMs).toBeLessThan(6_000)
    },
  )

  it('a network that is slow, cuts and blocks web sockets loses nothing and doubles nothing', async () => {
    expectWell(await poorNetwork(1, 1_000))
  })

  it('a blocked web socket leaves plain requests, each made twice on the way, and doubles nothing', async () => {
    expectWell(await blockedSockets(1, 1_000, ['asked twice']))
  })

  it('a captive portal, which answers everything with a page, is never taken for the server', async () => {
    expectWell(await portal(1, 1_000), 6)
  })
})
