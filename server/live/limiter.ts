import { createCounter } from './counter.ts'

export interface LimiterOptions {
  /** Messages of one phone in a second, at most. */
  readonly messagesPerSecond: number
  /** Strangers' questions from one address in a minute. Phones that are known never count: a field shares an address. */
  readonly strangersPerMinute: number
  /** Wrong words from one address in a minute, more than a field mistypes; right ones never count. */
  readonly wrongWordsPerMinute: number
}

export const defaultLimits: LimiterOptions = {
  messagesPerSecond: 50,
  strangersPerMinute: 600,
  wrongWordsPerMinute: 200,
}

/** Phones and addresses that are told apart at a time: some 20 MB at the very most. */
const mostKeys = 50_000

export interface Limiter {
  /** False when this phone has sent too much in this second. */
  takeMessage(phone: string): boolean
  /** False when too many strangers have asked from this address. */
  takeStranger(address: string): boolean
  /** False once too many wrong words have come from this address. */
  mayGuess(address: string): boolean
  /** Counts wrong words. */
  takeGuess(address: string): boolean
}

/** Whoever has one address of IPv6 has a whole network of 2^64: its first four groups, written out. */
export function networkOf(address: string): string {
  if (!address.includes(':') || address.startsWith('::ffff:')) return address
  const [head = '', tail] = address.split('::')
  const groups = (text: string | undefined): string[] => (text ? text.split(':') : [])
  const written = [...groups(head), ...groups(tail)].length
  const zeros = tail === undefined ? [] : Array.from({ length: Math.max(0, 8 - written) }, () => '0')
  return [...groups(head), ...zeros, ...groups(tail)].slice(0, 4).join(':')
}

export function createLimiter(options: LimiterOptions = defaultLimits, now: () => number = Date.now): Limiter {
  const messages = createCounter({ points: options.messagesPerSecond, windowMs: 1_000, mostKeys, now })
  const strangers = createCounter({ points: options.strangersPerMinute, windowMs: 60_000, mostKeys, now })
  const guesses = createCounter({ points: options.wrongWordsPerMinute, windowMs: 60_000, mostKeys, now })
  return {
    takeMessage: phone => messages.take(phone),
    takeStranger: address => strangers.take(networkOf(address)),
    mayGuess: address => guesses.hasLeft(networkOf(address)),
    takeGuess: address => guesses.take(networkOf(address)),
  }
}
