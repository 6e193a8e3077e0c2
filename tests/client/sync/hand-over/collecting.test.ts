import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { hashOfSecret } from '#client/device/secret-hash.ts'
import {
  type Collected,
  type Collecting,
  collect,
  missingOf,
  nothingCollected,
} from '#client/sync/hand-over/collecting.ts'
import { framesOf, parseFrame } from '#client/sync/hand-over/frames.ts'

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_'
const dataOf = (length: number, step = 7): string =>
  Array.from({ length }, (_, place) => letters[(place * step + (place >> 6)) % 64]).join('')

const codesOf = (data: string) => framesOf(data, hashOfSecret)

/** What came of the last code, and everything collected before it. */
function readAll(codes: readonly string[], from: Collecting = nothingCollected): Collected {
  let so = from
  let last: Collected = { kind: 'not ours' }
  for (const code of codes) {
    last = collect(so, code, hashOfSecret)
    if ('so' in last) so = last.so
  }
  return last
}

describe('codes of a hand-over', () => {
  it('make the text again in any order, and with some of them twice', () => {
    const check = fc.check(
      fc.property(
        fc.integer({ min: 1, max: 6_000 }),
        fc.array(fc.nat({ max: 50 }), { maxLength: 40 }),
        (length, order) => {
          const data = dataOf(length)
          const codes = codesOf(data)
          const [first = '', ...rest] = codes
          const shuffled = [
            ...order.map(place => rest[place % Math.max(1, rest.length)] ?? first),
            ...rest.toReversed(),
            first,
          ]
          // Everything but the first code is read before it, so it is the first that completes.
          const read =
            rest.length === 0 ? readAll([first]) : readAll(shuffled.filter(code => code !== first).concat(first))
          expect(read).toEqual({ kind: 'whole', data })
        },
      ),
      { numRuns: 200 },
    )
    expect(fc.defaultReportMessage(check as never)).toBeUndefined()
  })

  it('are short enough for a code that a phone reads off a screen', () => {
    for (const code of codesOf(dataOf(5_000))) expect(code.length).toBeLessThanOrEqual(440)
  })

  it('say which are missing', () => {
    const read = readAll([1, 3].map(place => codesOf(dataOf(1_900))[place] ?? ''))
    expect(read.kind === 'kept' && missingOf(read.so)).toEqual([1, 3, 5])
  })

  it('of another text begin again with it', () => {
    const [one = ''] = codesOf(dataOf(800))
    const [, other = ''] = codesOf(dataOf(800, 11))
    const read = readAll([one, other])
    expect(read.kind).toBe('another')
    expect(read.kind === 'another' && [...read.so.parts.keys()]).toEqual([2])
  })

  it('that carry the same name and other data are found out', () => {
    const [one = '', two = ''] = codesOf(dataOf(700))
    const forged = two.replace(/.$/, letter => (letter === 'A' ? 'B' : 'A'))
    expect(readAll([one, forged]).kind).toBe('damaged')
  })

  it.each([
    ['nothing', ''],
    ['an invite', 'https://golf.example/#/join/a/b/c'],
    ['a place of none', 'six-threes:0123456789ab:3:2:AAAA'],
    ['a place before the first', 'six-threes:0123456789ab:0:2:AAAA'],
    ['other letters', 'six-threes:0123456789ab:1:2:A A'],
  ])('are told from %s', (_, code) => {
    expect(parseFrame(code)).toBeNull()
    expect(collect(nothingCollected, code, hashOfSecret)).toEqual({ kind: 'not ours' })
  })
})
