import { io, type Socket } from 'socket.io-client'
import { startChild } from './child.ts'
import { type BenchResult, quantile, rounded } from './figures.ts'
import { push, startPhones, type WirePhone } from './phones.ts'

/** Before anything counts, for both: by then the code is compiled and both databases write over their own log. */
const warmUpScores = 2_000
const rounds = 12
const scoresInRound = 100
const budget = { median: 1.3, p99: 2 }

/** One score: from the writer's tap on the wire until the other three hold it, in milliseconds. */
type Trial = () => Promise<number>

/** A score on one phone to the other three, durable; beside a relay that writes one row first. */
export async function benchLive(): Promise<BenchResult> {
  const [ours, relay] = await Promise.all([
    startChild('tests/bench/ours.ts'),
    startChild('tests/bench/relay.ts', ['durable']),
  ])
  const [ourTrial, relayTrial] = await Promise.all([trialOfOurs(ours.port), trialOfRelay(relay.port)])
  await sampleOf(ourTrial, warmUpScores)
  await sampleOf(relayTrial, warmUpScores)
  const samples: { ours: number[]; relay: number[] } = { ours: [], relay: [] }
  // Turn about, so that whatever else the machine does falls on both.
  for (let round = 0; round < rounds; round++) {
    samples.relay.push(...(await sampleOf(relayTrial, scoresInRound)))
    samples.ours.push(...(await sampleOf(ourTrial, scoresInRound)))
  }
  await Promise.all([ours.stop(), relay.stop()])
  return resultOf(samples.ours, samples.relay)
}

function resultOf(ours: readonly number[], relay: readonly number[]): BenchResult {
  const figures = (samples: readonly number[]) => ({ median: quantile(samples, 0.5), p99: quantile(samples, 0.99) })
  const [a, b] = [figures(ours), figures(relay)]
  const ratio = { median: a.median / b.median, p99: a.p99 / b.p99 }
  const holds = ratio.median <= budget.median && ratio.p99 <= budget.p99
  const shown = (x: { median: number; p99: number }) => ({ median: rounded(x.median), p99: rounded(x.p99) })
  return { name: 'live', ours: shown(a), yardstick: shown(b), ratio: shown(ratio), budget, holds }
}

async function sampleOf(trial: Trial, count: number): Promise<number[]> {
  const samples: number[] = []
  for (let i = 0; i < count; i++) samples.push(await trial())
  return samples
}

async function trialOfOurs(port: number): Promise<Trial> {
  const [writer, ...others] = (await startPhones(port, 1)) as [WirePhone, ...WirePhone[]]
  return async () => {
    const text = writer.nextScore()
    const arrivals = others.map(({ socket }) => whenTold(socket, text))
    const start = performance.now()
    const answered = push(writer.socket, [text])
    await Promise.all(arrivals)
    const elapsed = performance.now() - start
    await answered
    return elapsed
  }
}

function whenTold(socket: WirePhone['socket'], text: string): Promise<void> {
  return new Promise(resolve => {
    const hear = (message: { readonly ops: readonly (readonly [number, string, ...unknown[]])[] }) => {
      if (!message.ops.some(([, told]) => told === text)) return
      socket.off('tell', hear)
      resolve()
    }
    socket.on('tell', hear)
  })
}

async function trialOfRelay(port: number): Promise<Trial> {
  const sockets = await Promise.all([1, 2, 3, 4].map(() => connectRelay(port)))
  const [writer, ...others] = sockets as [Socket, ...Socket[]]
  let n = 0
  return async () => {
    // As long as a score of ours on the wire.
    const text = `${++n}`.padEnd(230, '.')
    const arrivals = others.map(socket => new Promise(resolve => socket.once('score', resolve)))
    const start = performance.now()
    const answered = new Promise<void>(resolve => writer.emit('score', text, resolve))
    await Promise.all(arrivals)
    const elapsed = performance.now() - start
    await answered
    return elapsed
  }
}

export function connectRelay(port: number, room = 'one'): Promise<Socket> {
  const socket = io(`http://127.0.0.1:${port}`, { transports: ['websocket'], forceNew: true, auth: { room } })
  return new Promise(resolve => socket.once('connect', () => resolve(socket)))
}
