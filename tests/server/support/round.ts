import { expect } from 'vitest'
import { inviteFact, makeInvite, makePhone } from './phone.ts'
import { openRoom } from './room.ts'
import { stored } from './verdicts.ts'

export const deskInvite = makeInvite('d', 'desk')
export const scorerInvite = makeInvite('s', 'scorer', 'a')
export const viewerInvite = makeInvite('v', 'viewer')

/** Alder has started the log and given three invites; Birch scores group a; Cedar comes with the desk's invite. */
export async function openRound() {
  const alder = makePhone('alder')
  const setup = await openRoom(alder.hello.log)
  const birch = makePhone('birch', scorerInvite)
  const cedar = makePhone('cedar', deskInvite)
  const start = alder.op([alder.keyFact('desk'), ...[deskInvite, scorerInvite, viewerInvite].map(inviteFact)])
  const join = birch.op([birch.keyFact('scorer', 'a')])
  expect(await setup.push(alder, start)).toEqual([stored(1)])
  expect(await setup.push(birch, join)).toEqual([stored(2)])
  return { ...setup, alder, birch, cedar, start, join }
}
