import { expect, test } from 'vitest'
import { formatJoinLink } from '#client/state/join-link.ts'
import { formatOwnLink, parseOwnLink } from '#client/state/own-link.ts'
import type { InviteId, LogId } from '#core/values/ids.ts'

const secret = 'abcdefghijklmnopqrstuv'
const link = { log: 'birch' as LogId, invite: { id: 'owner' as InviteId, secret } }
const page = 'https://scores.example/'

test('a code reads back as what it was made of, whole or as its fragment', () => {
  const text = formatOwnLink(page, link)
  expect(text).toBe(`https://scores.example/#/own/birch/owner/${secret}`)
  for (const form of [text, text.slice(text.indexOf('/own'))]) expect(parseOwnLink(form)).toEqual(link)
})

test.each([
  ['of an outing', formatJoinLink(page, link)],
  ['without a secret', `${page}#/own/birch/owner`],
  ['with a secret that is too short', `${page}#/own/birch/owner/short`],
  ['with more', `${page}#/own/birch/owner/${secret}/more`],
  ['of nothing', '/own'],
  ['of none', ''],
])('a link %s is no code of a bag', (_what, text) => {
  expect(parseOwnLink(text)).toBeNull()
})
