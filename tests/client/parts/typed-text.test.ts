import { describe, expect, it } from 'vitest'
import { typedText } from '#client/parts/typed-text.ts'
import { personName } from '#shared/atoms.ts'

describe('what is typed or pasted', () => {
  it.each([
    ['Alder', 'Alder'],
    ['Bir\tch\r\nOak', 'Bir ch Oak'],
    ['\u202eAlder\u202c', 'Alder'],
    ['Al\u200bder\ufeff', 'Alder'],
    ['\u0000Alder\u001b[31m', 'Alder[31m'],
    ['नीलू', 'नीलू'],
    ['Zoë', 'Zoë'],
    [`A${'\u0301'.repeat(60)}lder`, `A${'\u0301'.repeat(3)}lder`],
    ['=1+1', '=1+1'],
    ['<b>Alder</b>', '<b>Alder</b>'],
    ['אלון', 'אלון'],
  ])('%j becomes %j, and a server takes it', (typed, becomes) => {
    expect(typedText(typed)).toBe(becomes)
    expect(personName.safeParse(becomes).success).toBe(true)
  })
})
