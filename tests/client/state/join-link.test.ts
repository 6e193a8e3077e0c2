import { expect, test } from 'vitest'
import { formatJoinLink, parseJoinLink } from '#client/state/join-link.ts'
import type { InviteId, LogId } from '#core/values/ids.ts'

const secret = 'abcdefghijklmnopqrstuv'
const link = { log: 'quillmoor' as LogId, invite: { id: 'desk' as InviteId, secret } }

test('a link reads back as what it was made of, whole or as its fragment', () => {
  const text = formatJoinLink('https://scores.example/', link)
  expect(text).toBe(`https://scores.example/#/join/quillmoor/desk/${secret}`)
  for (const form of [text, ` ${text}\n`, text.slice(text.indexOf('#')), text.slice(text.indexOf('/join'))])
    expect(parseJoinLink(form)).toEqual(link)
})

test.each([
  '',
  'https://scores.example/',
  `https://scores.example/#/join/quillmoor/desk`,
  `https://scores.example/#/join/quillmoor/desk/${secret}/more`,
  `https://scores.example/#/join/quillmoor/desk/short`,
  `https://scores.example/#/join/Quillmoor/desk/${secret}`,
  `https://scores.example/#/join/quillmoor/de sk/${secret}`,
  `javascript:alert(1)#/join/quillmoor/desk/${secret}`,
])('%j is no invite', text => {
  expect(parseJoinLink(text)).toBeNull()
})
