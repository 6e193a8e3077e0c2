import { describe, expect, it } from 'vitest'
import { formatDots, formatList } from '#client/words/figures.ts'
import { isolated } from '#client/words/isolated.ts'
import { say } from '#client/words/say-any.ts'

const hebrew = 'אלון'
const apart = `\u2068${hebrew}\u2069`

describe('a name that is written from right to left', () => {
  it.each([hebrew, 'أرز', 'سرو 3', 'Alon אלון', '\u{1e900}'])('stands apart in a sentence: %s', name => {
    expect(isolated(name)).toBe(`\u2068${name}\u2069`)
  })

  it.each(['Alder', 'Łukasz', '山田', '🏌️', '=1+1', ''])('and no other does: %s', name => {
    expect(isolated(name)).toBe(name)
  })

  it('stands apart wherever a text takes one in', () => {
    expect(say('phone-out', { name: hebrew })).toContain(apart)
    expect(formatList([hebrew, 'Birch', 3])).toBe(`${apart}, Birch, 3`)
    expect(formatDots([hebrew, null, false, 'Birch'])).toBe(`${apart} · Birch`)
  })
})
