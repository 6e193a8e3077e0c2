import { isDeepStrictEqual } from 'node:util'
import * as fc from 'fast-check'
import { expect, it } from 'vitest'

/** Set SEED to run a failing history again. */
export const seed = Number(process.env.SEED ?? Math.floor(Math.random() * 2 ** 31))

const mostRuns = 20_000
/** A busy machine is no fault: a history takes well under a millisecond on a quiet one. */
const timeoutMs = 300_000

/** A property over 20,000 random values, or fewer where each is a long one; its seed is printed. */
export function holds<T>(rule: string, values: fc.Arbitrary<T>, check: (value: T) => void, runs = mostRuns): void {
  it(
    rule,
    () => {
      process.stdout.write(`seed ${seed}: ${rule}\n`)
      const property = fc.property(values, value => {
        check(value)
      })
      const { failed, ...run } = fc.check(property, { numRuns: runs, seed })
      if (failed) throw new Error(fc.defaultReportMessage({ failed, ...run } as fc.RunDetails<[T]>))
    },
    timeoutMs,
  )
}

/** That two values are deeply equal, told quickly: what the runtime's own comparison does not settle the test's does, with words. */
export function same(found: unknown, expected: unknown): void {
  if (!isDeepStrictEqual(found, expected)) expect(found).toEqual(expected)
}
