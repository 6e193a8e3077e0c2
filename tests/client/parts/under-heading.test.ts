import { expect, test } from 'vitest'
import { underHeading } from '#client/parts/under-heading.ts'

test.each([
  ['Player 2', 'Player 2 name', 'name'],
  ['Player 2', 'Player 2 name is missing.', 'name is missing.'],
  ['Skins', 'Skins: skins left over', 'skins left over'],
  ['Skins', 'Whose tee', 'Whose tee'],
  ['', 'Player 2 name', 'Player 2 name'],
])('under the heading "%s" the text "%s" says "%s"', (heading, text, rest) => {
  expect(underHeading(heading, text)).toBe(rest)
})
