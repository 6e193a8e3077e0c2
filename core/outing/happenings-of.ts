import { type HoleKey, holeKey } from '#core/card/score.ts'
import type { Happenings } from '#core/formats/happenings.ts'
import type { HoleAndLap, Ruling } from './facts.ts'
import { gamesNamed } from './games-of.ts'
import { emptyGameNotes } from './notes.ts'
import type { Game, Outing } from './outing.ts'

/** Everything beside scores that bears on a game: what its groups noted, and what the desk ruled. */
export function happeningsOf({ notes, games: all }: Outing, game: Game): Happenings {
  const isOver = ({ games }: Ruling): boolean => games?.some(id => gamesNamed(all, id).includes(game.id)) ?? true
  const rulings = notes.rulings.map(({ ruling }) => ruling).filter(isOver)
  return {
    ...(notes.ofGames.get(game.id) ?? emptyGameNotes),
    holesOut: notes.holesOut,
    drives: notes.drives,
    absences: notes.absences,
    penalties: rulings.flatMap(each => (each.kind === 'penalty' ? [{ ...each, hole: keyOf(each.hole) }] : [])),
    disqualified: rulings.flatMap(each => (each.kind === 'disqualified' ? [{ ...each, hole: keyOf(each.hole) }] : [])),
    playsOff: new Map(rulings.flatMap(playsOff)),
  }
}

const keyOf = (at: HoleAndLap | null): HoleKey | null => at && holeKey({ hole: at[0], lap: at[1] })

const playsOff = (ruling: Ruling) => (ruling.kind === 'plays-off' ? [[ruling.ball, ruling.strokes] as const] : [])
