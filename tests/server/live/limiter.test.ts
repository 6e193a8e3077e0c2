import { describe, expect, it, onTestFinished, vi } from 'vitest'
import { createLimiter, defaultLimits, networkOf, placeOfCount } from '#server/live/limiter.ts'

const names = (count: number): string[] => Array.from({ length: count }, (_, n) => `phone ${n}`)

describe('a limiter', () => {
  it('gives each phone so many in a second, and another its own', async () => {
    const limiter = createLimiter({ ...defaultLimits, messagesPerSecond: 3 })
    const taken = [1, 2, 3, 4].map(() => limiter.takeMessage('birch'))
    expect(await Promise.all(taken)).toEqual([true, true, true, false])
    expect(await limiter.takeMessage('rowan')).toBe(true)
  })

  it('lets nobody guess for a minute once too many words were wrong', async () => {
    vi.useFakeTimers()
    onTestFinished(() => void vi.useRealTimers())
    const limiter = createLimiter({ ...defaultLimits, wrongWordsPerMinute: 2 })
    expect(await limiter.mayGuess('192.0.2.1')).toBe(true)
    await limiter.takeGuess('192.0.2.1')
    expect(await limiter.mayGuess('192.0.2.1')).toBe(true)
    await limiter.takeGuess('192.0.2.1')
    expect(await limiter.mayGuess('192.0.2.1')).toBe(false)
    expect(await limiter.mayGuess('192.0.2.2')).toBe(true)
    vi.advanceTimersByTime(59_000)
    expect(await limiter.mayGuess('192.0.2.1')).toBe(false)
    vi.advanceTimersByTime(1_001)
    expect(await limiter.mayGuess('192.0.2.1')).toBe(true)
  })

  it('counts in a bounded number of places, however many come, and a field of 400 hardly shares one', () => {
    expect(new Set(names(200_000).map(placeOfCount)).size).toBeLessThanOrEqual(65_536)
    // The places are drawn anew by every server: about one pair of 400 is to be expected, a dozen once in many million runs.
    expect(new Set(names(400).map(placeOfCount)).size).toBeGreaterThan(388)
  })
})

describe('an address of IPv6', () => {
  it.each([
    ['2001:db8::1', '2001:db8:0:0'],
    ['2001:db8::ffff:1', '2001:db8:0:0'],
    ['2001:db8:0:0:5::1', '2001:db8:0:0'],
    ['2001:db8:1::', '2001:db8:1:0'],
    ['::1', '0:0:0:0'],
    ['2001:0DB8:0000:00a0::1', '2001:db8:0:a0'],
  ])('%s counts as one of the network %s', (address, network) => {
    expect(networkOf(address)).toBe(network)
  })
})
