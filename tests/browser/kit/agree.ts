import { execFileSync } from 'node:child_process'
import { expect, type Page } from '@playwright/test'
import { catalogue } from '#client/words/say-any.ts'
import type { Op } from '#core/log/op.ts'
import { parseKey } from '#core/outing/keys.ts'
import type { SettleOutput } from '#core/outing/settle-output.ts'
import type { SettledGame, SettledLine, SettledMatch } from '#core/outing/settle-output-games.ts'
import { loadDriver } from '#server/store/driver.ts'
import { type PencilCard, pencilMatch, pencilPoints } from '#tests/kit/plain-scoring.ts'
import type { TestPlayer } from '#tests/kit/quillmoor.ts'
import { openTab } from './golfer.ts'

/** What a driver knows of a round: who plays, who with whom, and what it has tapped. */
export interface Tapped {
  readonly players: readonly TestPlayer[]
  readonly sides: readonly [readonly string[], readonly string[]]
  readonly card: PencilCard
}

const words = (text: string): string => text.replaceAll(/\s+/g, ' ').trim()

/** The board of a page says what the driver works out with a pencil from its own list. */
export async function boardAgrees(page: Page, tapped: Tapped, { timeout = 15_000 } = {}): Promise<void> {
  await openTab(page, 'Board')
  const stableford = page.getByRole('region', { name: 'Stableford' })
  for (const player of tapped.players) {
    const points = pencilPoints(player, tapped.card[player.name] ?? [])
    const line = stableford.getByRole('listitem').filter({ hasText: player.name })
    await expect(line, `the board of ${player.name}`).toHaveText(new RegExp(`\\b${points}$`), { timeout })
  }
  const match = pencilMatch(tapped.players, tapped.sides, tapped.card)
  const region = page.getByRole('region', { name: 'Four-ball match' })
  const stand = match.isWon ? `won ${match.text}` : match.text
  const who = match.ahead === null ? '' : `${tapped.sides[match.ahead].join(' & ')} `
  await expect(region, 'the board of the match').toContainText(who + stand, { timeout })
}

/** The card of a page shows every score of the list, hole by hole. */
export async function cardAgrees(page: Page, tapped: Tapped): Promise<void> {
  await openTab(page, 'Card')
  const table = page.getByRole('table', { name: 'Hole by hole' })
  for (let hole = 1; hole <= 18; hole++) {
    const row = table.getByRole('row').filter({ has: page.getByRole('link', { name: `Hole ${hole}`, exact: true }) })
    const cells = await row.getByRole('cell').allInnerTexts()
    const expected = tapped.players.map(({ name }) => String(tapped.card[name]?.[hole - 1] ?? ''))
    expect(cells.map(words).slice(1), `the card of hole ${hole}`).toEqual(expected)
  }
}

/** What `settle` prints of the file that the page gives to download. */
export async function settleDownload(page: Page, form: 'whole' | 'plain'): Promise<SettleOutput> {
  await openTab(page, 'Card')
  const downloading = page.waitForEvent('download')
  await page.getByRole('link', { name: `Download the outing file, ${form}` }).click()
  const file = await (await downloading).path()
  return JSON.parse(
    execFileSync(process.execPath, ['--import', 'tsx', 'scripts/settle.ts', file], { encoding: 'utf8' }),
  )
}

/** What `settle` says of every card, every total and the match is what the driver works out with a pencil. */
export function settleAgrees(settled: SettleOutput, tapped: Tapped): void {
  for (const player of tapped.players) {
    const card = settled.cards.find(({ name }) => name === player.name)
    expect(
      card?.holes.map(({ score }) => score),
      `settled card of ${player.name}`,
    ).toEqual(tapped.card[player.name])
  }
  for (const game of settled.games) {
    if (game.kind === 'total') totalsAgree(game.lines, tapped)
    if (game.kind === 'match') matchAgrees(game.matches, tapped)
  }
  expect(settled.games.map(({ kind }) => kind).sort()).toEqual(['match', 'total'])
}

function totalsAgree(lines: readonly SettledLine[], { players, card }: Tapped): void {
  const totals = Object.fromEntries(lines.map(({ names, total }) => [names.join(), total]))
  const expected = players.map(player => [player.name, pencilPoints(player, card[player.name] ?? [])])
  expect(totals, 'settled points').toEqual(Object.fromEntries(expected))
}

function matchAgrees(matches: readonly SettledMatch[], { players, sides, card }: Tapped): void {
  const expected = pencilMatch(players, sides, card)
  const leaders = ['A', 'B'] as const
  expect(matches.map(({ text, leader }) => ({ text, leader }))).toEqual([
    { text: expected.text, leader: expected.ahead === null ? null : leaders[expected.ahead] },
  ])
}

/** Every game on the board says what `settle` printed of the same acts. */
export async function boardTellsSettled(page: Page, settled: SettleOutput): Promise<void> {
  await openTab(page, 'Board')
  for (const game of settled.games) {
    if (game.format === null) continue
    const region = page.getByRole('region', { name: catalogue[game.format].text, exact: true })
    await expect(region, `the board of ${game.format}`).toBeVisible()
    for (const text of boardTexts(game)) await expect(region, `the board of ${game.format}`).toContainText(text)
  }
}

/** What has to stand on the board for a game, in the order of its lines. */
function boardTexts(game: SettledGame): readonly (string | RegExp)[] {
  switch (game.kind) {
    case 'gap':
      return game.gaps.map(() => 'waits')
    case 'total':
      return game.lines.map(({ names, total }) => new RegExp(`${names.join(' & ')} .*?${total ?? '–'}`))
    case 'match':
      return game.matches.map(matchText)
    case 'shares':
      return game.lines.map(({ names, total }) => `${names.join(' & ')} ${total}`)
    case 'parts':
      return [
        ...game.lines.map(({ names, total }) => `${names.join(' & ')} ${total}`),
        ...game.parts.flatMap(({ match }) => (match ? [matchText(match)] : [])),
      ]
  }
}

/** The stand is on the row of the side that is up: "Alder & Cedar 2 up", "Birch & Rowan won 3 & 2". */
function matchText({ names, text, leader, winner, isFinished }: SettledMatch): string {
  const ahead = winner ?? (isFinished ? null : leader)
  if (ahead === null) return text
  const side = (names[ahead === 'A' ? 0 : 1] ?? []).join(' & ')
  return `${side} ${winner === null ? '' : 'won '}${text}`
}

/** The server's rows hold the scores of the list and no others. */
export async function rowsAgree(dataDir: string, settled: SettleOutput, { players, card }: Tapped): Promise<void> {
  const rows = await scoresInRows(dataDir)
  const ballOf = (name: string) => settled.cards.find(each => each.name === name)?.ball ?? ''
  const expected = players.map(({ name }) => [
    ballOf(name),
    Object.fromEntries((card[name] ?? []).map((score, hole) => [hole + 1, score])),
  ])
  expect(rows, "the server's rows").toEqual(Object.fromEntries(expected))
}

/** The scores in the server's rows: every score op, the replaced ones left out. */
async function scoresInRows(dataDir: string): Promise<Record<string, Record<number, unknown>>> {
  const { DatabaseSync } = await loadDriver()
  const database = new DatabaseSync(`${dataDir}/six-threes.db`)
  const rows = database.prepare('SELECT text FROM ops ORDER BY seq').all() as { text: string }[]
  database.close()
  const ops = rows.map(({ text }) => JSON.parse(text) as Op)
  const replaced = new Set(ops.flatMap(op => op.facts.flatMap(fact => fact.replaces.map(id => `${fact.key} ${id}`))))
  const scores: Record<string, Record<number, unknown>> = {}
  for (const op of ops) {
    for (const { key, value } of op.facts) {
      const parts = parseKey(key)
      if (parts?.kind !== 'score' || replaced.has(`${key} ${op.device}.${op.n}`)) continue
      const ball = String(parts.ball)
      scores[ball] = { ...scores[ball], [Number(parts.hole)]: value }
    }
  }
  return scores
}
