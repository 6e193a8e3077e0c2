import { createHash, randomBytes } from 'node:crypto'
import { RateLimiterMemory } from 'rate-limiter-flexible'

export interface LimiterOptions {
  /** Messages of one phone in a second, at most. */
  readonly messagesPerSecond: number
  /** Strangers' questions from one address in a minute. Phones that are known never count: a field shares an address. */
  readonly strangersPerMinute: number
  /**
   * Wrong words from one address in a minute, more than a field mistypes or a hand can type; right ones never count.
   * 1,000 of them a minute for five hours are 3 x 10^5 of the 1,024^3 = 1.07 x 10^9 words: with 36 groups' words standing
   * at every moment they meet one in about 100 such days, and open there a request that somebody in the group still has
   * to let in. A count for each phone would hold nobody: who guesses makes phones at will, and once the address has used
   * its count a phone with right words cannot be told from another guess. Links, QR codes and hand-overs have no count.
   */
  readonly wrongWordsPerMinute: number
}

export const defaultLimits: LimiterOptions = {
  messagesPerSecond: 50,
  strangersPerMinute: 600,
  wrongWordsPerMinute: 1_000,
}

export interface Limiter {
  /** False when this phone has sent too much in this second. */
  takeMessage(phone: string): Promise<boolean>
  /** False when too many strangers have asked from this address. */
  takeStranger(address: string): Promise<boolean>
  /** False once too many wrong words have come from this address. */
  mayGuess(address: string): Promise<boolean>
  /** Counts wrong words. */
  takeGuess(address: string): Promise<boolean>
}

/** Whoever has one address of IPv6 has a whole network of 2^64: its first four groups, written out. */
export function networkOf(address: string): string {
  if (!address.includes(':') || address.startsWith('::ffff:')) return address
  const [head = '', tail] = address.split('::')
  const groups = (text: string | undefined): string[] => (text ? text.split(':').map(withoutZeros) : [])
  const written = [...groups(head), ...groups(tail)].length
  const zeros = tail === undefined ? [] : Array.from({ length: Math.max(0, 8 - written) }, () => '0')
  return [...groups(head), ...zeros, ...groups(tail)].slice(0, 4).join(':')
}

/** A group of IPv6 may be written with zeros before it, in either case of letters. */
const withoutZeros = (group: string): string => group.replace(/^0+(?=.)/, '').toLowerCase()

const salt = randomBytes(16)

/**
 * A phone or an address counts in one of 65,536 places, so that what is counted stays bounded however many ask. Two
 * that meet in one share it; which do is another secret at every start, so that nobody can choose to meet a phone there.
 */
export const placeOfCount = (name: string): string =>
  createHash('sha1').update(salt).update(name).digest('hex').slice(0, 4)

export function createLimiter(options: LimiterOptions = defaultLimits): Limiter {
  const messages = new RateLimiterMemory({ points: options.messagesPerSecond, duration: 1 })
  const strangers = new RateLimiterMemory({ points: options.strangersPerMinute, duration: 60 })
  const guesses = new RateLimiterMemory({ points: options.wrongWordsPerMinute, duration: 60 })
  const take = (limiter: RateLimiterMemory, name: string) =>
    limiter.consume(placeOfCount(name)).then(
      () => true,
      () => false,
    )
  return {
    takeMessage: phone => take(messages, phone),
    takeStranger: address => take(strangers, networkOf(address)),
    mayGuess: async address => {
      const counted = await guesses.get(placeOfCount(networkOf(address)))
      return (counted?.remainingPoints ?? 1) > 0
    },
    takeGuess: address => take(guesses, networkOf(address)),
  }
}
