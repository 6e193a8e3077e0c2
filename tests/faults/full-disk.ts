import { sayCode } from '#client/words/say-any.ts'
import { type Outcome, runFault } from './fault.ts'
import { type Means, makeSmallDisk } from './kit/small-disk.ts'
import { compareEnd, compareNow, setStage, underLoad, whenSettled } from './kit/stage.ts'
import { pause, until } from './kit/waiting.ts'

/**
 * The disk fills up under load and is freed again. Meanwhile nothing is acknowledged, the phones say that it is still to
 * be sent, and the server goes on; afterwards all is stored, also after a restart, and the file is whole.
 */
export const diskFull = (rounds: number, means: Means): Promise<Outcome> =>
  runFault(`a disk that is full, by a ${means}`, rounds, async (ends, notes) => {
    const disk = await makeSmallDisk(ends, means)
    const stage = await setStage(ends, { phones: 5, server: disk.server })
    const { server, phones, history } = stage
    for (let round = 0; round < rounds; round++) {
      await underLoad(phones, async () => {
        await pause(200)
        const before = history.putOff('disk')
        disk.fill()
        await until('acts are put off for the disk', () => history.putOff('disk') > before + 5)
        await until('every phone has something to send', () => phones.every(({ engine }) => engine.foot().waiting > 0))
      })
      await compareNow(stage)
      const isUp = await fetch(`${server.url}/healthz`).then(({ status }) => status)
      notes.healthWhileFull = isUp
      disk.free()
      for (const { engine } of phones) engine.wake()
      notes.storedAgainMs = Math.round(await whenSettled(phones))
      await compareNow(stage)
    }
    await server.end('SIGKILL')
    await server.start()
    notes.putOff = history.putOff('disk')
    notes.words = sayCode('later-', 'disk', 'later-busy')
    await compareEnd(stage, disk.seen)
    return history
  })
