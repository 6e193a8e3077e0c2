import { useLocation } from 'wouter'
import { Strip } from '../../parts/Strip.tsx'
import { stripOf, stripWords } from '../../parts/strip-view.ts'
import { mayScore } from '../../state/outing-store.ts'
import { useOuting } from '../../state/use-outing.ts'
import { useResults } from '../../state/use-results.ts'
import { say } from '../../words/say-any.ts'
import { openLines } from '../card/card-view.ts'
import { OpenHoles } from '../card/OpenHoles.tsx'
import { ClosedLine } from '../hole/ClosedLine.tsx'
import { threeOf } from '../hole/hole-view.ts'
import { TieAtEnd } from '../hole/more/TieAtEnd.tsx'
import { AimsOfThree } from '../hole/own/AimsOfThree.tsx'
import { useAims } from '../hole/own/use-aims.ts'
import { tieAtEnd } from '../hole/tie-left.ts'
import { useGroupShown } from '../hole/use-group-shown.ts'
import { OutingPage } from '../outing/OutingPage.tsx'
import { tabPath } from '../paths.ts'
import { type GameLines, gameLines } from './game-lines.ts'
import { SendResult } from './SendResult.tsx'

/** After the last hole: the last three closed, what is open still, how every game came out, and the way to the card. */
export function FinishScreen() {
  const { outing, log, group, whose } = useGroupShown()
  const results = useResults()
  const me = useOuting(store => store.me)
  const [, go] = useLocation()
  const [aims] = useAims(log, whose.ball)
  if (!outing || !results || !log || !group) return null
  const first = whose.ball ?? group.balls[0]
  const level = first && results.cards.get(first)
  const last = level?.threes.at(-1)
  const isClosed = last !== undefined && group.balls.every(ball => threeOf(results, ball, last.number)?.isClosed)
  const canScore = mayScore(me)
  const tied = canScore ? tieAtEnd(outing, results, group) : null
  const isOpen = openLines(outing, group).length > 0
  const onward = (
    <div className="turn">
      <button type="button" className="button loud" onClick={() => go(tabPath(log, 'card'))}>
        {say('finish-check')}
      </button>
    </div>
  )
  return (
    <OutingPage tab="hole" above={onward}>
      {level && (
        <Strip
          blocks={stripOf(outing, level, null)}
          label={stripWords(outing.balls.get(level.ball)?.name ?? level.ball, level)}
          hasSums
        />
      )}
      {last && isClosed && <ClosedLine outing={outing} levels={results} balls={group.balls} three={last.number} />}
      <h1 className="finish-title">{say(isOpen ? 'finish-open' : 'finish-title')}</h1>
      {isOpen && <OpenHoles log={log} outing={outing} group={group} />}
      {gameLines(outing, results).map(game => (
        <GameResultLines key={game.id} game={game} />
      ))}
      {tied && <TieAtEnd log={log} outing={outing} group={group} tied={tied} />}
      {whose.ball && aims && last?.isClosed && (
        <AimsOfThree log={log} ball={whose.ball} closed={last} next={null} isShut={group.balls.length > 1} />
      )}
      <SendResult outing={outing} results={results} group={group} />
    </OutingPage>
  )
}

function GameResultLines({ game: { title, lines } }: { readonly game: GameLines }) {
  return (
    <section className="finish-game" aria-label={title}>
      <h2>{title}</h2>
      <ul>
        {lines.map(line => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  )
}
