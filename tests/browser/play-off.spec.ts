import { expect, type Page, test } from '@playwright/test'
import { autumnDay } from '#tests/kit/plain-outing.ts'
import { quillmoor } from '#tests/kit/quillmoor.ts'
import { settleDownload } from './kit/agree.ts'
import { axeClean } from './kit/axe.ts'
import { goToHole, openTab, tapScore, whenOnServer } from './kit/golfer.ts'
import { openFile } from './kit/outing-file.ts'
import { noComplaints } from './kit/round.ts'
import { openServed } from './kit/served.ts'

const cedarsCard = quillmoor.pars.map(par => par + 1)

/** Three in gross stroke play whose terms are extra holes. All are in but Birch's last: a par there is Alder's 72 again. */
const beforeTheLast = {
  ...autumnDay,
  players: autumnDay.players.slice(0, 3),
  groups: [{ id: 'three', name: 'Group 1', balls: ['alder', 'birch', 'cedar'] }],
  games: [
    {
      id: 'gross',
      format: 'stroke-play-gross',
      sides: [['alder'], ['birch'], ['cedar']],
      ties: { method: 'gross', scheme: 'nine-six-three-one', holes: 'card-order', ifStillTied: 'extra-holes' },
    },
  ],
  main: 'gross',
  scores: [
    { ball: 'alder', holes: [...quillmoor.pars] },
    { ball: 'birch', holes: [...quillmoor.pars.slice(0, 17), null] },
    { ball: 'cedar', holes: cedarsCard },
  ],
}

const lines = (page: Page) => page.getByRole('region', { name: 'Stroke play, gross' }).getByRole('listitem')
const onTheHole = (page: Page, hole: number) => page.getByRole('heading', { name: `Hole ${hole}`, exact: true })

test('two tied after the last hole play off over two extra holes, and the result says by what', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  await openFile(page, beforeTheLast, 'Alder')
  await goToHole(page, 18)
  const asked = page.getByRole('region', { name: 'A tie to play off' })

  await test.step('it is asked on the last hole once the last score is in, and again where the result is read', async () => {
    await expect(asked).toHaveCount(0)
    await tapScore(page, 'Birch', 4)
    await expect(asked).toContainText('Tied after the last hole: Alder, Birch. A play-off over extra holes decides.')
    await axeClean(page, 'hole', 'a tie to play off')
    await page.getByRole('button', { name: 'Finish' }).click()
    await expect(page.getByRole('heading', { name: 'All scores in' })).toBeVisible()
    await expect(lines(page)).toHaveText([
      '1= Alder 72 (level par)',
      '1= Birch 72 (level par)',
      '3 Cedar 90 (+18)',
      'Alder and Birch are still tied: a play-off over extra holes decides',
    ])
    await axeClean(page, 'finish', 'a tie')
  })

  await test.step('the first extra hole is level: one more', async () => {
    await asked.getByRole('button', { name: 'Play on: hole 1' }).click()
    await expect(onTheHole(page, 1)).toBeVisible()
    await tapScore(page, 'Alder', 4)
    await expect(asked).toHaveCount(0)
    await tapScore(page, 'Birch', 4)
    await asked.getByRole('button', { name: 'Play on: hole 2' }).click()
    await expect(onTheHole(page, 2)).toBeVisible()
  })

  await test.step('the second decides', async () => {
    await tapScore(page, 'Alder', 5)
    await tapScore(page, 'Birch', 4)
    await expect(asked).toHaveCount(0)
    await page.getByRole('button', { name: 'Finish' }).click()
    await expect(lines(page)).toHaveText([
      '1 Birch 72 (level par)',
      '2 Alder 72 (level par)',
      '3 Cedar 90 (+18)',
      'Birch before Alder by the play-off over 2 holes: 8 to 9',
    ])
    await expect(asked).toHaveCount(0)
  })

  await test.step('the board, the card and what settle prints say the same; the round itself is eighteen holes', async () => {
    await openTab(page, 'Board')
    await page.getByText('How ties were split').click()
    await expect(page.getByText('Birch before Alder by the play-off over 2 holes: 8 to 9')).toBeVisible()
    await openTab(page, 'Card')
    await expect(page.getByRole('row', { name: /^Total/ })).toContainText('72')
    await expect(page.getByText('Every hole is written.')).toBeVisible()
    await whenOnServer(page)
    const settled = await settleDownload(page, 'whole')
    const game = settled.games.find(({ id }) => id === 'gross')
    if (game?.kind !== 'total') throw new Error('there are totals')
    expect(game.lines.map(({ names, place }) => [names[0], place])).toEqual([
      ['Birch', 1],
      ['Alder', 2],
      ['Cedar', 3],
    ])
  })
  noComplaints([phone])
  await server.stop()
})
