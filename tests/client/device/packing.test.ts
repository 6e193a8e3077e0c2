import { describe, expect, it } from 'vitest'
import { packText, unpackText } from '#client/device/packing.ts'

describe('a packed text', () => {
  it.each(['', 'Quillmoor', 'Björk 白樺 🌲'.repeat(500)])('is the same text again: %#', async text => {
    const packed = await packText(text)
    expect(packed).toMatch(/^[A-Za-z0-9_-]+$/)
    expect(await unpackText(packed)).toBe(text)
  })

  it('is small where the words come again', async () => {
    const text = Array.from({ length: 72 }, (_, n) => `{"key":"g/g1/score/p${n % 4}/${n % 18}/1/card","n":${n}}`).join(
      '',
    )
    expect((await packText(text)).length).toBeLessThan(text.length / 4)
  })

  it.each(['!', 'AAAA', 'not packed at all'])('is told from %s', async text => {
    expect(await unpackText(text)).toBeNull()
  })

  it('swells to no more than a day of golf', async () => {
    expect(await unpackText(await packText('x'.repeat(20_000_001)))).toBeNull()
  })
})
