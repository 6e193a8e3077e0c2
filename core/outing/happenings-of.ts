import { type HoleKey, holeKey } from '#core/card/score.ts'
import type { Happenings } from '#core/formats/happenings.ts'
import type { BallId } from '#core/values/ids.ts'
import type { HoleAndLap, Ruling } from './facts.ts'
import { holesOutside } from './game-holes.ts'
import { gamesNamed } from './games-of.ts'
import { emptyGameNotes } from './notes.ts'
import type { Game, Outing } from './outing.ts'

/** Everything beside scores that bears on a game: what its groups noted, and what the desk ruled. */
export function happeningsOf(outing: Outing, game: Game): Happenings {
  const { notes, games: all } = outing
  const isOver = ({ games }: Ruling): boolean => games?.some(id => gamesNamed(all, id).includes(game.id)) ?? true
  const rulings = notes.rulings.map(({ ruling }) => ruling).filter(isOver)
  return {
    ...(notes.ofGames.get(game.id) ?? emptyGameNotes),
    holesOut: withOutside(notes.holesOut, holesOutside(outing, game)),
    drives: notes.drives,
    absences: notes.absences,
    penalties: rulings.flatMap(each => (each.kind === 'penalty' ? [{ ...each, hole: keyOf(each.hole) }] : [])),
    disqualified: rulings.flatMap(each => (each.kind === 'disqualified' ? [{ ...each, hole: keyOf(each.hole) }] : [])),
    playsOff: lowestOf(rulings, 'plays-off'),
    netOff: lowestOf(rulings, 'net-off'),
  }
}

/** A hole that a game leaves out counts nothing in it, whatever it counts elsewhere. */
function withOutside(out: Happenings['holesOut'], outside: readonly HoleKey[]): Happenings['holesOut'] {
  if (outside.length === 0) return out
  return new Map([...out, ...outside.map(key => [key, { counts: 'nothing', reason: null }] as const)])
}

const keyOf = (at: HoleAndLap | null): HoleKey | null => at && holeKey({ hole: at[0], lap: at[1] })

/** Of several figures for a ball the lowest, whichever ruling came last: what was declared low stands. */
function lowestOf(rulings: readonly Ruling[], kind: 'plays-off' | 'net-off'): ReadonlyMap<BallId, number> {
  const lowest = new Map<BallId, number>()
  for (const ruling of rulings) {
    if (ruling.kind !== kind) continue
    lowest.set(ruling.ball, Math.min(ruling.strokes, lowest.get(ruling.ball) ?? ruling.strokes))
  }
  return lowest
}
