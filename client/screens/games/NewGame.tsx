import { useState } from 'react'
import type { FormatName } from '#core/formats/format-names.ts'
import { gameFacts } from '#core/outing/acts.ts'
import type { Game } from '#core/outing/outing.ts'
import type { GroupId } from '#core/values/ids.ts'
import { createId } from '../../device/random-ids.ts'
import { useWork } from '../../parts/use-work.ts'
import { act } from '../../state/actions.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'
import { FormatList } from './FormatList.tsx'
import { GameFields } from './GameFields.tsx'
import { gameOfDraft } from './game-acts.ts'
import { type GameDraft, newGameDraft } from './game-draft.ts'
import { type FieldFault, faultsOfGame } from './game-faults.ts'
import { type BallsInPlay, newGameId } from './games-view.ts'

interface Props {
  /** The group whose game it will be; null for the whole outing's. */
  readonly scope: GroupId | null
  readonly inPlay: BallsInPlay
  /** The games there are: their formats are not offered again. */
  readonly taken: readonly Game[]
}

/** Chooses a format, shows what it proposes, and puts it in. */
export function NewGame({ scope, inPlay, taken }: Props) {
  const [format, setFormat] = useState<FormatName | null>(null)
  return (
    <section className="section" aria-label={say('games-add')}>
      <h2>{say('games-add')}</h2>
      <p className="quiet">{say('games-balls-fixed', { balls: say(ballsWord(inPlay.ballPlayers)) })}</p>
      {format && (
        <NewFields key={format} format={format} scope={scope} inPlay={inPlay} onDone={() => setFormat(null)} />
      )}
      <FormatList
        balls={inPlay.balls}
        ballPlayers={inPlay.ballPlayers}
        isOn={each => each === format}
        isLeftOut={each => taken.some(game => game.format === each)}
        onTick={(each, isOn) => setFormat(isOn ? each : null)}
      />
    </section>
  )
}

const ballsWords = ['games-balls-1', 'games-balls-2', 'games-balls-3', 'games-balls-4'] as const

const ballsWord = (players: number) => ballsWords[players - 1] ?? 'games-balls-1'

interface FieldsProps extends Omit<Props, 'taken'> {
  readonly format: FormatName
  readonly onDone: () => void
}

function NewFields({ format, scope, inPlay, onDone }: FieldsProps) {
  const { balls, ballPlayers } = inPlay
  const state = useOuting(store => store.state)
  const [draft, setDraft] = useState<GameDraft>(() => newGameDraft(format, true))
  const [faults, setFaults] = useState<readonly FieldFault[]>([])
  const { isWorking, work } = useWork()
  const put = (): void => {
    const found = faultsOfGame(format, draft, balls, ballPlayers)
    setFaults(found)
    if (found.length > 0) return
    const id = newGameId(state, format, createId)
    work(async () => {
      await act('game added', gameFacts(gameOfDraft({ id, group: scope, format, draft, balls })))
      onDone()
    })
  }
  return (
    <section className="group-box" aria-label={say(format)}>
      <h3>{say(format)}</h3>
      <GameFields
        format={format}
        game={draft}
        balls={balls}
        ballPlayers={ballPlayers}
        onChange={changed => setDraft({ ...draft, ...changed })}
        faultAt={field => faults.find(each => each.field === field)?.text}
      />
      <button type="button" className="button loud" disabled={isWorking} onClick={put}>
        {say('games-put-in', { game: say(format) })}
      </button>
    </section>
  )
}
