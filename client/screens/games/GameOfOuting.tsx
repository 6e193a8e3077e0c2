import { useState } from 'react'
import { needsHandicaps } from '#core/formats/game-gaps.ts'
import { formatTable } from '#core/formats/table.ts'
import type { Game } from '#core/outing/outing.ts'
import { SecondTap } from '../../parts/SecondTap.tsx'
import { useWork } from '../../parts/use-work.ts'
import { act } from '../../state/actions.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'
import { gameTitle } from '../board/board-view.ts'
import { isTotal } from './format-settings.ts'
import { GameFields, strokesWord } from './GameFields.tsx'
import { asWritten, changedFacts, gameOfDraft, takeAwayFacts } from './game-acts.ts'
import { draftOfGame, type GameDraft } from './game-draft.ts'
import { type FieldFault, faultsOfGame } from './game-faults.ts'
import type { BallsInPlay } from './games-view.ts'
import { isInOrder, wordsOfSides } from './sides.ts'

interface Props {
  readonly game: Game
  readonly inPlay: BallsInPlay
  readonly canChange: boolean
}

/** One game as it stands, with its fields behind a tap. */
export function GameOfOuting({ game, inPlay, canChange }: Props) {
  const outing = useOuting(store => store.outing)
  const written = asWritten(game)
  const title = gameTitle(game.format)
  const names = [...(outing?.balls.values() ?? [])]
  const { format } = game
  const isSided =
    (format && isInOrder(format)) || (game.sides ?? []).some(side => side.length > 1) || game.sides?.length === 2
  const { work } = useWork()
  return (
    <section className="section" aria-label={title}>
      <h2>{title}</h2>
      {format && isSided && <p>{wordsOfSides(format, names, game.sides ?? [])}</p>}
      {format && <p className="quiet">{gameSummary(game)}</p>}
      {canChange && written && (
        <details>
          <summary>{say('games-change-one', { game: title })}</summary>
          <div className="group-box">
            <Change key={JSON.stringify(game)} game={game} inPlay={inPlay} />
            <SecondTap
              label={say('games-take-away', { game: title })}
              sure={say('games-take-away-sure', { game: title })}
              warning={say('games-taken-hint')}
              onSure={() => work(() => act('game taken away', takeAwayFacts(written)))}
            />
          </div>
        </details>
      )}
    </section>
  )
}

/** What a game counts by, in one line: "95 % · Everybody has their own strokes. Ties by countback." */
function gameSummary({ format, methods }: Game): string {
  if (format === null) return ''
  const hasAllowance = formatTable[format].settings.includes('allowancePercent') && methods.allowancePercent !== null
  const percent = hasAllowance ? say('board-allowance', { percent: methods.allowancePercent ?? 0 }) : null
  const isWithout = methods.courseHandicap === 'without-rating-minus-par'
  const ofIndex = isWithout && needsHandicaps(formatTable[format], methods) ? say('games-without-rating') : null
  const ties = isTotal(format) ? say(methods.ties === null ? 'games-ties-stand' : 'games-ties-countback') : null
  const sentences = [say(strokesWord(format, methods)), ties].filter(Boolean).join(' ')
  return [percent, ofIndex, sentences].filter(Boolean).join(' · ')
}

/** What is typed stands here until it is saved; a change by another phone starts it anew. */
function Change({ game, inPlay }: Pick<Props, 'game' | 'inPlay'>) {
  const { balls, ballPlayers } = inPlay
  const [draft, setDraft] = useState<GameDraft>(() => draftOfGame(game, balls))
  const [faults, setFaults] = useState<readonly FieldFault[]>([])
  const { isWorking, work } = useWork()
  const written = asWritten(game)
  if (written === null) return null
  const { format } = written
  const facts = changedFacts(written, gameOfDraft({ ...written, draft, balls }))
  const save = (): void => {
    const found = faultsOfGame(format, draft, balls, ballPlayers)
    setFaults(found)
    if (found.length === 0) work(() => act('game changed', facts))
  }
  return (
    <>
      <GameFields
        format={format}
        game={draft}
        balls={balls}
        ballPlayers={ballPlayers}
        onChange={changed => setDraft({ ...draft, ...changed })}
        faultAt={field => faults.find(each => each.field === field)?.text}
      />
      <button type="button" className="button" disabled={isWorking || facts.length === 0} onClick={save}>
        {facts.length === 0 ? say('games-saved') : say('games-save', { game: say(format) })}
      </button>
    </>
  )
}
