import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import type { BallId } from '#core/values/ids.ts'
import { plainWith } from '#tests/kit/plain-outing.ts'
import { joinsOf, type Named, secretsIn } from '#tests/kit/secret-search.ts'
import { type RunningApp, startApp } from '#tests/server/support/app.ts'
import { isOnServer, openPage, type Page, until } from './page.ts'

let app: RunningApp
const pages: Page[] = []

const open = async (): Promise<Page> => {
  const page = await openPage(app.url)
  pages.push(page)
  return page
}

beforeEach(async () => {
  app = await startApp()
})

afterEach(async () => {
  for (const page of pages.splice(0)) page.actions.closeOuting()
  await app.close()
  vi.unstubAllGlobals()
})

const alder = 'alder' as BallId

/** Every secret that a phone keeps: its key, the invite that it came by and those that it made. */
function secretsOf({ actions, store }: Page): Named<string>[] {
  const { key, invite, invites } = actions.holding().record
  const name = store.getState().me?.label ?? ''
  const given = [...(invite ? [invite] : []), ...invites]
  return [
    { name: `the key of ${name}’s phone`, value: key },
    ...given.map(({ id, secret }) => ({ name: `the secret of invite ${id}`, value: secret })),
  ]
}

/** What a phone gives away: the outing whole and plain, a card as a file, as its codes and as the text in them. */
async function filesOf({ actions }: Page): Promise<Named<string>[]> {
  const card = actions.cardText(alder, 'Autumn, Alder')
  if (card === null) throw new Error('no card')
  const codes = await actions.codesOfText(card)
  const packed = codes.map(code => code.split(':').at(-1)).join('')
  expect(await actions.textOfCodes(packed)).toBe(card)
  return [
    { name: 'the whole file', value: actions.exportFile('whole')?.text ?? '' },
    { name: 'the plain file', value: actions.exportFile('plain')?.text ?? '' },
    { name: 'the card', value: card },
    { name: 'the codes of the card', value: codes.join('\n') },
  ]
}

it('the outing’s files and a card taken home hold no key, no invite’s secret and none of the three words', async () => {
  const desk = await open()
  await desk.actions.startOuting(factsOfPlain(plainWith()), 'Alder')
  const link = await desk.actions.inviteLink('desk', null)
  await desk.actions.inviteLink('viewer', null)
  await until(isOnServer(desk))
  const said = await desk.actions.sayWords(null)
  if (!said.ok) throw new Error(said.error)
  const birch = await open()
  expect(await birch.actions.joinOuting(link, 'Birch')).toMatchObject({ ok: true })
  await until(isOnServer(birch))
  await until(() => desk.store.getState().outing?.phones.size === 2)

  const secrets = [
    ...secretsOf(desk),
    ...secretsOf(birch),
    ...joinsOf(said.value.words).map(value => ({ name: 'the three words', value })),
  ]
  expect(secrets.length).toBeGreaterThan(6)
  const files = [...(await filesOf(desk)), ...(await filesOf(birch))]
  // The search looks at what is there: the whole file holds hashes, and every file its players.
  const hash = [...(desk.store.getState().outing?.phones.values() ?? [])][0]?.hash ?? ''
  expect(secretsIn(files, [{ name: 'a hash', value: hash }])).toContainEqual(expect.stringContaining('the whole file'))
  for (const { name, value } of files.filter(file => !file.name.includes('codes'))) {
    expect([name, value.includes('Alder')]).toEqual([name, true])
  }
  // What is handed over to go on with does carry the invite: the search finds it there.
  expect(secretsIn([{ name: 'the hand-over', value: desk.actions.handOverText() }], secrets)).not.toEqual([])
  expect(secretsIn(files, secrets)).toEqual([])
})
