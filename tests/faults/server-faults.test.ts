import { describe, expect, it } from 'vitest'
import type { Outcome } from './fault.ts'
import { diskFull } from './full-disk.ts'
import { killedUnderLoad, stoppedAndWoken } from './killed-server.ts'
import { meansHere } from './kit/small-disk.ts'
import { expectWell } from './kit/well.ts'

describe('the built server and phones on real sockets', () => {
  it('a server killed under load five times has every act that it acknowledged, once, in each phone’s order', async () => {
    expectWell(await killedUnderLoad(5))
  })

  it('a server that stands still for 5 s and goes on doubles nothing, and no phone says meanwhile that it is live', async () => {
    expectWell(await stoppedAndWoken(1, 5_000))
  })

  it.each(meansHere())(
    'a disk that is full (by a %s) puts acts off in words, and stores all once it is freed',
    async means => {
      const outcome: Outcome = await diskFull(1, means)
      expectWell(outcome)
      expect(outcome.notes).toMatchObject({ healthWhileFull: 503, words: 'the server’s disk is full' })
    },
  )
})
