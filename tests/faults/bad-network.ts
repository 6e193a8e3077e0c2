import { type BadProxy, startBadProxy, type Trouble } from '#tests/kit/bad-proxy.ts'
import { type Notes, type Outcome, runFault } from './fault.ts'
import type { Ends } from './kit/ends.ts'
import type { History } from './kit/history.ts'
import { missedMs, overdueMs } from './kit/limits.ts'
import { makeOwnNetwork } from './kit/own-network.ts'
import type { FaultPhone } from './kit/phone.ts'
import { makeServer, type RealServer } from './kit/server.ts'
import { compareEnd, compareNow, type Stage, setStage, underLoad } from './kit/stage.ts'
import { pause, until } from './kit/waiting.ts'

interface Network {
  readonly stage: Stage
  readonly proxy: BadProxy
  /** The phones that reach the server through the bad network alone. */
  readonly behind: readonly FaultPhone[]
}

const none: Trouble = { kind: 'none' }

/** Four phones, of which all but the first are behind the network. */
async function setNetwork(ends: Ends, first: Trouble = none): Promise<Network> {
  const server: RealServer = await makeServer(ends)
  const proxy = await startBadProxy(server.url)
  ends.add(proxy.close)
  proxy.set(first)
  const urlFor = (place: number): string => (place === 0 ? server.url : proxy.url)
  const stage = await setStage(ends, { phones: 4, server, urlFor })
  return { stage, proxy, behind: stage.phones.slice(1) }
}

/** What loses: a proxy that swallows what comes, or the machine's own network, in which the packets themselves vanish. */
export type Loser = 'proxy' | 'own network'

interface Silencing extends Omit<Network, 'proxy'> {
  readonly silence: (ways: readonly ('up' | 'down')[]) => void
  readonly clear: () => void
}

async function setSilencing(ends: Ends, by: Loser): Promise<Silencing> {
  if (by === 'proxy') {
    const { stage, proxy, behind } = await setNetwork(ends)
    const silence = (ways: readonly ('up' | 'down')[]): void => proxy.set({ kind: 'silence', ways })
    return { stage, behind, silence, clear: () => proxy.set(none) }
  }
  const network = makeOwnNetwork(ends)
  const server = await makeServer(ends, { before: network.before, at: network.direct })
  const urlFor = (place: number): string =>
    place === 0 ? server.url : server.url.replace(network.direct, network.troubled)
  const stage = await setStage(ends, { phones: 4, server, urlFor })
  return { stage, behind: stage.phones.slice(1), silence: network.silence, clear: network.clear }
}

/** Nothing comes through in one way or both, and nobody is told. */
export const silentLoss = (
  rounds: number,
  ways: readonly ('up' | 'down')[],
  isIdle: boolean,
  by: Loser = 'proxy',
): Promise<Outcome> =>
  runFault(
    `a silent loss ${by === 'proxy' ? '' : 'of packets '}${ways.join(' and ')}${isIdle ? ' while nobody scores' : ''}`,
    rounds,
    async (ends, notes) => {
      const { stage, behind, silence, clear } = await setSilencing(ends, by)
      const { history } = stage
      for (let round = 0; round < rounds; round++) {
        silence(ways)
        if (!isIdle) for (const phone of behind) await phone.score()
        await expectNotLive({ history, behind, notes }, isIdle ? missedMs : overdueMs)
        for (const phone of behind) await phone.score()
        if (!behind.every(({ engine }) => engine.foot().waiting > 0)) {
          history.fail('falseMarks', 'a phone says that the server has what it cannot have sent')
        }
        await compareNow(stage)
        clear()
        for (const { engine } of behind) engine.wake()
        notes.allSentMs = Math.round(await until('all is sent', () => behind.every(phone => phone.isSettled()), 90_000))
      }
      await compareEnd(stage)
      return history
    },
  )

interface Watched {
  readonly history: History
  readonly behind: readonly FaultPhone[]
  readonly notes: Notes
}

async function expectNotLive({ history, behind, notes }: Watched, limitMs: number): Promise<void> {
  const isGone = (): boolean => behind.every(({ engine }) => engine.foot().link !== 'live')
  const sinceMs = await until('no phone says live', isGone, 60_000)
  notes.notLiveMs = Math.max(Number(notes.notLiveMs ?? 0), Math.round(sinceMs))
  if (sinceMs > limitMs) history.fail('falseMarks', `a phone said live for ${Math.round(sinceMs)} ms of silence`)
}

/** A network that is bad all the time, in each of these ways, while everybody scores. */
const troubles: readonly Trouble[] = [
  { kind: 'delay', ms: 300 },
  { kind: 'cut', afterBytes: 20_000 },
  { kind: 'no web sockets' },
]

/** Slow, cut again and again, then without web sockets: everything arrives all the same, once. */
export const poorNetwork = (rounds: number, loadMs: number): Promise<Outcome> =>
  runFault('a network that is slow, cuts and blocks web sockets', rounds, async ends => {
    const { stage, proxy } = await setNetwork(ends)
    for (let round = 0; round < rounds; round++) {
      for (const trouble of troubles) {
        proxy.set(trouble)
        await underLoad(stage.phones, () => pause(loadMs))
        await compareNow(stage)
      }
      proxy.set(none)
    }
    await compareEnd(stage)
    return stage.history
  })

/**
 * Web sockets are blocked from the first try on: the plain requests are enough, also where each is made or
 * answered twice.
 */
export const blockedSockets = (
  rounds: number,
  loadMs: number,
  kinds: readonly ('asked twice' | 'answered twice')[],
): Promise<Outcome> =>
  runFault('a blocked web socket', rounds, async (ends, notes) => {
    const { stage, proxy, behind } = await setNetwork(ends, { kind: 'no web sockets' })
    const { history } = stage
    for (let round = 0; round < rounds; round++) {
      for (const kind of kinds) {
        proxy.set({ kind })
        await underLoad(stage.phones, () => pause(loadMs))
        const isAllThere = (): boolean => behind.every(({ engine }) => engine.foot().waiting === 0)
        notes[`${kind}AllSentMs`] = Math.round(await until('all is sent', isAllThere, 60_000))
        await compareNow(stage)
      }
    }
    await compareEnd(stage)
    return history
  })

/** Another page with status 200 for whatever is asked: no word of it is taken for the server's. */
export const portal = (rounds: number, portalMs: number): Promise<Outcome> =>
  runFault('a captive portal', rounds, async (ends, notes) => {
    const { stage, proxy, behind } = await setNetwork(ends)
    const { history } = stage
    for (let round = 0; round < rounds; round++) {
      proxy.set({ kind: 'portal' })
      for (const phone of behind) await phone.score()
      await expectNotLive({ history, behind, notes }, overdueMs)
      await pause(portalMs)
      if (behind.some(phone => phone.isSettled())) history.fail('falseMarks', 'a phone takes the portal for the server')
      await compareNow(stage)
      proxy.set(none)
      for (const { engine } of behind) engine.wake()
      notes.allSentMs = Math.round(await until('all is sent', () => behind.every(phone => phone.isSettled()), 90_000))
    }
    await compareEnd(stage)
    return history
  })
