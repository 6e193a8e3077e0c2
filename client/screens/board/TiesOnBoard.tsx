import type { Tie } from '#core/formats/game-result.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { sideName } from '../../parts/side-name.ts'
import { formatShare } from '../../words/figures.ts'
import { say, sayCode } from '../../words/say-any.ts'

/** The countback of each tie: what was counted, and the step that put each side before the next. */
export function TiesOnBoard({ outing, ties }: { readonly outing: Outing; readonly ties: readonly Tie[] }) {
  if (ties.length === 0) return null
  return (
    <details>
      <summary>{say('board-ties')}</summary>
      {ties.map(tie => (
        <div key={tie.sides.join('|')} className="board-working">
          <p className="quiet">{say(`tie-counted-${tie.method}`)}</p>
          <ul className="lines">
            {tieLines(outing, tie).map(line => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      ))}
    </details>
  )
}

/** "Birch before Cedar by the last nine: 17.5 to 19", one line for each pair of neighbours. */
export function tieLines(outing: Outing, tie: Tie): readonly string[] {
  const { sides, decidedBy, working, ifStillTied } = tie
  return sides.slice(1).map((side, place) => {
    const first = sideName(outing, sides[place] ?? [])
    const second = sideName(outing, side)
    const name = decidedBy[place] ?? null
    if (name === null) return stillTied(first, second, ifStillTied)
    if (name === 'play-off') return playOffLine(outing, tie, place)
    const figures = working.find(step => step.name === name)?.figures.map(formatShare) ?? []
    const step = sayCode('tie-step-', name, 'tie-step-other')
    return say('tie-before', { first, second, step, one: figures[place] ?? '', other: figures[place + 1] ?? '' })
  })
}

/** Between one side and the next of a play-off over extra holes. */
function playOffLine(outing: Outing, { sides, playOffs }: Tie, place: number): string {
  const [side = [], next = []] = sides.slice(place, place + 2)
  const found = playOffs.find(playOff => playOff.sides.includes(side))
  const holes = found?.holes.length ?? 0
  const figureOf = (of: readonly BallId[]): number => found?.figures[found.sides.indexOf(of)] ?? 0
  return say('tie-before', {
    first: sideName(outing, side),
    second: sideName(outing, next),
    step: holes === 1 ? say('tie-step-play-off-one') : say('tie-step-play-off', { n: holes }),
    one: figureOf(side),
    other: figureOf(next),
  })
}

const stillTied = (first: string, second: string, end: Tie['ifStillTied']): string =>
  [say('tie-still', { first, second }), end && say(`tie-still-${end}`)].filter(Boolean).join(': ')
