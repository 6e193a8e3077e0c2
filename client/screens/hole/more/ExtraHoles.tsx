import { useState } from 'react'
import { Select } from '../../../parts/Select.tsx'
import { sideName } from '../../../parts/side-name.ts'
import { useWork } from '../../../parts/use-work.ts'
import { act } from '../../../state/actions.ts'
import { useOuting } from '../../../state/use-outing.ts'
import { formatList, formatOrdinal } from '../../../words/figures.ts'
import { say } from '../../../words/say-any.ts'
import { skinsLeftFacts } from '../../games/game-acts.ts'
import { mayChange } from '../../games/games-view.ts'
import { skinsAtEnd } from '../skins-left.ts'
import { tieLeft } from '../tie-left.ts'
import { extraHole, extraHoleFacts, nextExtraHole } from './extra-hole.ts'
import type { MoreProps } from './MoreOnHole.tsx'

/** Where a match is level after the last hole that there is, skins wait or a tie is to be played off: one hole more. */
export function ExtraHoles({ outing, results, group, at }: MoreProps) {
  const holes = [...group.round, ...group.extra]
  const isLast = holes.at(-1)?.hole === at.hole && holes.at(-1)?.lap === at.lap
  const matches = [...results.games.values()].flatMap(game => (game.kind === 'match' ? game.matches : []))
  const ours = matches.filter(({ sides }) => sides.flat().some(ball => group.balls.includes(ball)))
  const isLevel = ours.some(
    ({ state }) => state.toPlay === 0 && state.lead === 0 && (state.result === null || state.result.kind === 'halved'),
  )
  const left = skinsAtEnd(outing, results, group, at)
  const me = useOuting(store => store.me)
  const game = left && mayChange(outing, me, left.game) ? left.game : null
  const tied = tieLeft(results, group)
  const next = nextExtraHole(group)
  const [chosen, setChosen] = useState<number | null>(null)
  const { isWorking, work } = useWork()
  if (!isLast || !(isLevel || game || tied) || !next) return null
  const hole = chosen ?? next.hole
  const facts = [...extraHoleFacts(group, extraHole(group, hole)), ...(game ? skinsLeftFacts(game, 'play-on') : [])]
  return (
    <section className="section" aria-label={say('extra-title')}>
      <h2>{say('extra-title')}</h2>
      {isLevel && <p className="quiet">{say('extra-hint')}</p>}
      {tied && (
        <p className="quiet">
          {say('extra-hint-tie', { sides: formatList(tied.map(side => sideName(outing, side))) })}
        </p>
      )}
      {game && <p className="quiet">{say('extra-hint-skins', { n: left?.skins ?? 0 })}</p>}
      <Select
        label={say('extra-which')}
        value={String(hole)}
        options={[...outing.holes.keys()].map(each => ({ value: String(each), text: String(each) }))}
        onValue={value => setChosen(Number(value))}
      />
      <button
        type="button"
        className="button"
        disabled={isWorking}
        onClick={() => work(() => act('extra hole', facts))}
      >
        {say('extra-do', { hole, nth: formatOrdinal(holes.length + 1) })}
      </button>
    </section>
  )
}
