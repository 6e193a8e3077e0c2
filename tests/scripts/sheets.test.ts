import { describe, expect, test } from 'vitest'
import { looks } from '#tests/sheets/looks.ts'
import { screenAt, screenNames, unseen } from '#tests/sheets/screens.ts'

describe('the contact sheets', () => {
  test.each([
    ['', 'home'],
    ['#/', 'home'],
    ['#/join', 'join'],
    ['#/join/log/invite/secret', 'join'],
    ['#/o/abc/hole', 'hole'],
    ['#/o/abc/hole/8', 'hole'],
    ['#/o/abc/hole/8/2', 'hole'],
    ['#/o/abc/plan/8/1', 'plan'],
    ['#/o/abc/bag/8/1', 'bag-from'],
    ['#/bag', 'bag'],
    ['#/o/abc', 'nowhere'],
    ['#/o/abc/hole/8/2/9', 'nowhere'],
    ['#/no/such/page', 'nowhere'],
  ])('know the screen of the address "%s"', (hash, screen) => {
    expect(screenAt(`http://127.0.0.1:8686/${hash}`)).toBe(screen)
  })

  test('name every screen of the client that nobody has seen', () => {
    expect(screenNames).toEqual(expect.arrayContaining(['home', 'hole', 'board', 'card', 'share', 'nowhere']))
    const [first, ...rest] = screenNames
    expect(unseen(new Set(rest))).toEqual([first])
    expect(unseen(new Set(screenNames))).toEqual([])
  })

  test('show each screen at four widths, by day and by night, with text of the usual size and of twice that', () => {
    expect(looks).toHaveLength(16)
  })
})
