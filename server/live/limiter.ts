import { RateLimiterMemory } from 'rate-limiter-flexible'

export interface LimiterOptions {
  /** Messages of one phone in a second, at most. */
  readonly messagesPerSecond: number
  /** Strangers' questions from one address in a minute. Phones that are known never count: a field shares an address. */
  readonly strangersPerMinute: number
}

export const defaultLimits: LimiterOptions = { messagesPerSecond: 50, strangersPerMinute: 600 }

export interface Limiter {
  /** False when this phone has sent too much in this second. */
  takeMessage(phone: string): Promise<boolean>
  /** False when too many strangers have asked from this address. */
  takeStranger(address: string): Promise<boolean>
}

export function createLimiter({ messagesPerSecond, strangersPerMinute }: LimiterOptions = defaultLimits): Limiter {
  const messages = new RateLimiterMemory({ points: messagesPerSecond, duration: 1 })
  const strangers = new RateLimiterMemory({ points: strangersPerMinute, duration: 60 })
  const take = (limiter: RateLimiterMemory, key: string) =>
    limiter.consume(key).then(
      () => true,
      () => false,
    )
  return { takeMessage: phone => take(messages, phone), takeStranger: address => take(strangers, address) }
}
