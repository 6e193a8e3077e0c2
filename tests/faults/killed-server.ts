import { type Outcome, runFault } from './fault.ts'
import { overdueMs } from './kit/limits.ts'
import { compareEnd, compareNow, setStage, underLoad } from './kit/stage.ts'
import { pause, until } from './kit/waiting.ts'

/**
 * SIGKILL while eight phones score, again and again. After each restart, before the phones could mend anything, the log
 * has every act that was acknowledged, once, those of a phone in its order.
 */
export const killedUnderLoad = (kills: number): Promise<Outcome> =>
  runFault('a server killed under load', kills, async (ends, notes) => {
    const stage = await setStage(ends, { phones: 8 })
    const { server, phones, history } = stage
    await underLoad(phones, async () => {
      for (let kill = 0; kill < kills; kill++) {
        const before = history.acknowledged()
        await until('more is acknowledged', () => history.acknowledged() > before + 20)
        await pause(Math.random() * 250)
        await server.end('SIGKILL')
        await server.start()
        await compareNow(stage)
        for (const { engine } of phones) engine.wake()
      }
    })
    await compareEnd(stage)
    notes.acts = phones.reduce((sum, { engine }) => sum + engine.holding().record.nextN - 1, 0)
    return history
  })

/** SIGSTOP, in which sockets stay open and nobody answers, then SIGCONT. */
export const stoppedAndWoken = (rounds: number, stopMs: number): Promise<Outcome> =>
  runFault('a server that stands still', rounds, async (ends, notes) => {
    const stage = await setStage(ends, { phones: 6 })
    const { server, phones, history } = stage
    let slowestMs = 0
    await underLoad(phones, async () => {
      for (let round = 0; round < rounds; round++) {
        const before = history.acknowledged()
        await until('more is acknowledged', () => history.acknowledged() > before + 20)
        server.signal('SIGSTOP')
        slowestMs = Math.max(slowestMs, await until('no phone says live', () => phones.every(isNotLive), 30_000))
        await pause(Math.max(0, stopMs - slowestMs))
        server.signal('SIGCONT')
        await until('it goes on', () => history.acknowledged() > before + 40)
      }
    })
    await compareEnd(stage)
    notes.notLiveMs = Math.round(slowestMs)
    if (slowestMs > overdueMs) history.fail('falseMarks', `a phone said live ${Math.round(slowestMs)} ms after the end`)
    return history
  })

const isNotLive = ({ engine }: { readonly engine: { foot: () => { link: string } } }): boolean =>
  engine.foot().link !== 'live'
