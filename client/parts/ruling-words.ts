import type { HoleAndLap, Ruling } from '#core/outing/facts.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { formatDots, formatList } from '../words/figures.ts'
import { say } from '../words/say-any.ts'

/** "Birch: 2 penalty strokes, hole 8" */
export function rulingWords(outing: Outing | null, ruling: Ruling): string {
  const nameOf = (ball: BallId): string => outing?.balls.get(ball)?.name ?? ball
  switch (ruling.kind) {
    case 'no-penalty':
      return ruling.ball === null ? say('ruled-nobody') : say('ruled-no-penalty', { player: nameOf(ruling.ball) })
    case 'penalty': {
      const fill = { player: nameOf(ruling.ball), n: ruling.strokes, where: whereWords(ruling.hole) }
      if (ruling.holeLost) return say('ruled-hole-lost', fill)
      return say(ruling.strokes === 1 ? 'ruled-one' : 'ruled-penalty', fill)
    }
    case 'disqualified':
      return say('ruled-disqualified', { player: nameOf(ruling.ball), where: whereWords(ruling.hole) })
    case 'net-off':
      return say('ruled-net-off', { player: nameOf(ruling.ball), n: ruling.strokes })
    case 'plays-off':
      return say('ruled-plays-off', { player: nameOf(ruling.ball), n: ruling.strokes })
  }
}

const whereWords = (at: HoleAndLap | null): string =>
  at === null ? say('ruling-round') : say('card-hole', { hole: at[0] })

/** The games it is for, the rule and the reason, as far as they are given. */
export function rulingGrounds(outing: Outing, { games, rule, reason }: Ruling): string {
  const titles = games?.map(id => {
    const format = outing.games.find(game => game.id === id)?.format
    return format ? say(format) : id
  })
  return formatDots([titles && say('ruled-in', { games: formatList(titles) }), rule, reason])
}
