import type { Socket } from 'socket.io-client'
import { startChild } from './child.ts'
import { type BenchResult, rounded } from './figures.ts'
import { connectRelay } from './live.ts'
import { push, startPhones } from './phones.ts'

const groups = 32
/** Before anything counts, for both: by then the code is compiled. */
const warmUpMs = 4_000
const roundMs = 3_000
const rounds = 4
const budget = { perSecond: 0.6 }

/** Sends one score and waits for its answer. */
type Sender = () => Promise<unknown>

/** Durable scores a second from 32 groups of four, each phone one at a time; beside a relay that stores nothing. */
export async function benchThroughput(): Promise<BenchResult> {
  const [ours, relay] = await Promise.all([startChild('tests/bench/ours.ts'), startChild('tests/bench/relay.ts')])
  const ourSenders = await sendersOfOurs(ours.port)
  const relaySenders = await sendersOfRelay(relay.port)
  await scoresDuring(ourSenders, warmUpMs)
  await scoresDuring(relaySenders, warmUpMs)
  const counts = { ours: 0, relay: 0 }
  for (let round = 0; round < rounds; round++) {
    counts.relay += await scoresDuring(relaySenders, roundMs)
    counts.ours += await scoresDuring(ourSenders, roundMs)
  }
  await Promise.all([ours.stop(), relay.stop()])
  const perSecond = (count: number) => count / ((rounds * roundMs) / 1_000)
  const ratio = counts.ours / counts.relay
  return {
    name: 'throughput',
    ours: { perSecond: rounded(perSecond(counts.ours)) },
    yardstick: { perSecond: rounded(perSecond(counts.relay)) },
    ratio: { perSecond: rounded(ratio) },
    budget,
    holds: ratio >= budget.perSecond,
  }
}

async function scoresDuring(senders: readonly Sender[], durationMs: number): Promise<number> {
  const end = performance.now() + durationMs
  const counts = await Promise.all(
    senders.map(async send => {
      let count = 0
      for (; performance.now() < end; count++) await send()
      return count
    }),
  )
  return counts.reduce((sum, count) => sum + count, 0)
}

async function sendersOfOurs(port: number): Promise<readonly Sender[]> {
  const phones = await startPhones(port, groups)
  return phones.map(({ socket, nextScore }) => {
    // A phone hears what its group is told, as a page does.
    socket.on('tell', () => {})
    return () => push(socket, [nextScore()])
  })
}

async function sendersOfRelay(port: number): Promise<readonly Sender[]> {
  const rooms = Array.from({ length: groups * 4 }, (_, i) => `g${Math.floor(i / 4)}`)
  const sockets = await Promise.all(rooms.map(room => connectRelay(port, room)))
  return sockets.map(senderOfRelay)
}

function senderOfRelay(socket: Socket): Sender {
  socket.on('score', () => {})
  let n = 0
  return () => new Promise<void>(resolve => socket.emit('score', `${++n}`.padEnd(230, '.'), resolve))
}
