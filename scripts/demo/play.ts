import { setTimeout as wait } from 'node:timers/promises'
import { formatScore } from '#client/words/figures.ts'
import { say as wordFor } from '#client/words/say-any.ts'
import type { HoleScore } from '#core/card/score.ts'
import { scoreFact } from '#core/outing/acts.ts'
import { outingOf } from '#core/outing/outing-of.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import type { SettledMatch } from '#core/outing/settle-output-games.ts'
import { settledOf } from '#core/outing/settled.ts'
import type { BallId, GroupId } from '#core/values/ids.ts'
import { isKnownValue } from '#shared/facts.ts'
import { demoPlayers } from './field.ts'
import { type DemoPhone, whenOnServer, write } from './phone.ts'

export interface Pace {
  readonly paceS: number
  readonly say: (line: string) => void
}

/** Eighteen holes; each phone puts in its own player's score, and after every three the board is said. */
export async function playRound(phones: readonly DemoPhone[], { paceS, say }: Pace): Promise<void> {
  for (let hole = 1; hole <= 18; hole++) {
    for (const [place, phone] of phones.entries()) {
      await wait(paceS * 1000)
      await putIn(phone, place, hole)
    }
    for (const phone of phones) await whenOnServer(phone)
    say(
      `Hole ${hole}: ${demoPlayers.map(({ name }, place) => `${name} ${formatScore(scoreOf(place, hole))}`).join(', ')}`,
    )
    if (hole % 3 === 0) for (const line of boardOf(phones[0])) say(line)
  }
}

function scoreOf(place: number, hole: number): HoleScore {
  const strokes = demoPlayers[place]?.strokes[hole - 1] ?? 0
  return strokes === 0 ? 'picked-up' : strokes
}

async function putIn({ engine }: DemoPhone, place: number, hole: number): Promise<void> {
  const ball = (demoPlayers[place]?.name.toLowerCase() ?? '') as BallId
  const at = { group: 'four' as GroupId, ball, hole, lap: 1, record: 'card' } as const
  await write(engine, 'score entered', [scoreFact({ ...at, score: scoreOf(place, hole) })], 'four')
}

/** What every phone's board says, by the first phone. */
function boardOf(phone: DemoPhone | undefined): string[] {
  if (phone === undefined) return []
  const outing = outingOf(phone.engine.holding().state, isKnownValue)
  return settledOf(outing, resultsOf(outing)).games.flatMap(game => {
    if (game.kind === 'match') return game.matches.map(matchLine)
    if (game.kind !== 'total') return []
    const name = game.format === null ? game.id : wordFor(game.format)
    return [`  ${name}: ${game.lines.map(({ names, total }) => `${names.join(' & ')} ${total}`).join(', ')}`]
  })
}

function matchLine({ names, leader, text }: SettledMatch): string {
  const [above = '', below = ''] = names.map(side => side.join(' & '))
  if (leader === null) return `  ${above} v ${below}: ${text}`
  return leader === 'A' ? `  ${above} ${text} against ${below}` : `  ${below} ${text} against ${above}`
}
