import { describe, expect, test } from 'vitest'
import type { LogId } from '#core/values/ids.ts'
import { cardFileOf, isCardText, parseCardFile } from '#shared/card-file.ts'
import { plainWith } from '#tests/kit/plain-outing.ts'

const file = cardFileOf('card-abc' as LogId, plainWith())
const textOf = (value: unknown): string => JSON.stringify(value)

describe('a card file', () => {
  test('gives back the card that was put in', () => {
    expect(parseCardFile(textOf(file))).toEqual({ ok: true, value: file })
    expect(isCardText(textOf(file))).toBe(true)
  })

  test.each([
    ['no JSON', '{', 'not a card'],
    ['an outing', textOf(plainWith()), 'not a card'],
    ['a newer one', textOf({ ...file, version: 2 }), 'newer version'],
    ['an invite beside it', textOf({ ...file, invite: { id: 'i', secret: 's' } }), 'not a card'],
    ['an outing with a fault', textOf({ ...file, outing: plainWith({ groups: [] }) }), 'not a card'],
    ['another kind of id', textOf({ ...file, id: 'A B' }), 'not a card'],
  ])('does not take %s', (_, text, error) => {
    expect(parseCardFile(text)).toEqual({ ok: false, error })
  })
})
