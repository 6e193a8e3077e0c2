import type { Page } from '@playwright/test'
import { autumnDay } from '#tests/kit/plain-outing.ts'
import { openFile } from './outing-file.ts'

/** Opens a file on the first page under this name; gives what leads to a page of that outing without a walk. */
export async function openPrepared(
  page: Page,
  url: string,
  file: object,
  name = 'Alder',
): Promise<(path: string) => Promise<void>> {
  await page.goto(`${url}/#/`)
  await openFile(page, file, name)
  const log = /#\/o\/([^/]+)/.exec(page.url())?.[1]
  if (log === undefined) throw new Error('the file has not led to an outing')
  return async path => void (await page.goto(`${url}/#/o/${log}/${path}`))
}

/** One of a few that are all in sight; where the question stands alone in its section it has the section's name. */
export const choose = (page: Page, question: string, option: string): Promise<void> =>
  page
    .getByRole('group', { name: question })
    .or(page.getByRole('region', { name: question }))
    .getByRole('radio', { name: option, exact: true })
    .first()
    .check()

/** The day of the kit with so many holes written. */
export const dayThrough = (holes: number, change: object = {}) => ({
  ...autumnDay,
  scores: autumnDay.scores.map(({ ball, holes: all }) => ({
    ball,
    holes: all.map((score, at) => (at < holes ? score : null)),
  })),
  ...change,
})

/** Two of the four, each in a group of its own. */
export const inTwoGroups = {
  ...autumnDay,
  players: autumnDay.players.slice(0, 2),
  groups: [
    { id: 'a', name: 'Group 1', balls: ['alder'] },
    { id: 'b', name: 'Group 2', balls: ['birch'] },
  ],
  games: [{ id: 'points', format: 'stableford', sides: [['alder'], ['birch']] }],
  scores: [],
}
