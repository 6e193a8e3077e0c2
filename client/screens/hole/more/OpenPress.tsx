import { useState } from 'react'
import { holeKey } from '#core/card/score.ts'
import { pressFacts } from '#core/outing/acts-match.ts'
import { Choice } from '../../../parts/Choice.tsx'
import { sideName } from '../../../parts/side-name.ts'
import { useWork } from '../../../parts/use-work.ts'
import { act } from '../../../state/actions.ts'
import { say } from '../../../words/say-any.ts'
import type { MatchProps } from './MatchMore.tsx'

/** A new match inside a part, from this hole on; where the game has presses by hand. */
export function OpenPress({ outing, game, sides, at }: MatchProps) {
  const [side, setSide] = useState(0)
  const { isWorking, work } = useWork()
  const pressing = sides[side === 0 ? 0 : 1]
  const [by] = pressing
  const isPressed = outing.notes.ofGames.get(game.id)?.presses.some(({ from }) => from === holeKey(at)) ?? false
  // One press a hole: the page says above who opened it.
  if (game.methods.presses !== 'by-hand' || !by || isPressed) return null
  return (
    <section className="section" aria-label={say('press-title')}>
      <h2>{say('press-title')}</h2>
      <Choice
        label={say('press-by')}
        value={String(side)}
        options={sides.map((each, place) => ({ value: String(place), text: sideName(outing, each) }))}
        onValue={value => setSide(Number(value))}
      />
      <button
        type="button"
        className="button"
        disabled={isWorking}
        onClick={() => work(() => act('press opened', pressFacts(outing, { game: game.id, by, ...at })))}
      >
        {say('press-do', { side: sideName(outing, pressing), hole: at.hole })}
      </button>
    </section>
  )
}
