import { describe, expect, it } from 'vitest'
import { createCounter } from '#server/live/counter.ts'
import { networkOf } from '#server/live/limiter.ts'

function makeCounter(changes: { readonly points?: number; readonly mostKeys?: number } = {}) {
  let now = 1_000_000
  const counter = createCounter({ points: 3, windowMs: 1_000, mostKeys: 10, now: () => now, ...changes })
  const pass = (ms: number) => {
    now += ms
  }
  return { counter, pass }
}

const times = <T>(count: number, take: (n: number) => T): T[] => Array.from({ length: count }, (_, n) => take(n))

describe('a counter', () => {
  it('gives each key so many in a window, and all again in the next', () => {
    const { counter, pass } = makeCounter()
    expect(times(5, () => counter.take('birch'))).toEqual([true, true, true, false, false])
    expect([counter.hasLeft('birch'), counter.hasLeft('rowan')]).toEqual([false, true])
    expect(counter.take('rowan')).toBe(true)
    pass(999)
    expect(counter.take('birch')).toBe(false)
    pass(1)
    expect(counter.hasLeft('birch')).toBe(true)
    expect(counter.take('birch')).toBe(true)
  })

  it('goes on where the clock is set back', () => {
    const { counter, pass } = makeCounter()
    times(3, () => counter.take('birch'))
    pass(-3_600_000)
    expect(counter.take('birch')).toBe(true)
  })

  it('holds no more than so many keys, however many come; those beyond share what one has', () => {
    const { counter, pass } = makeCounter()
    times(10, n => counter.take(`known ${n}`))
    const beyond = times(100_000, n => counter.take(`unknown ${n}`))
    expect(beyond.filter(isTaken => isTaken)).toHaveLength(3)
    expect(counter.size()).toBe(11)
    expect(times(10, n => counter.take(`known ${n}`))).toEqual(times(10, () => true))
    pass(1_000)
    expect(counter.take('unknown 5')).toBe(true)
    expect(counter.size()).toBe(1)
  })
})

describe('an address of IPv6', () => {
  it.each([
    ['2001:db8::1', '2001:db8:0:0'],
    ['2001:db8::ffff:1', '2001:db8:0:0'],
    ['2001:db8:0:0:5::1', '2001:db8:0:0'],
    ['2001:db8:1::', '2001:db8:1:0'],
    ['::1', '0:0:0:0'],
  ])('%s counts as one of the network %s', (address, network) => {
    expect(networkOf(address)).toBe(network)
  })
})
