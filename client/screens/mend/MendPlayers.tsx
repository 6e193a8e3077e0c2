import { useState } from 'react'
import type { Outing } from '#core/outing/outing.ts'
import { useWork } from '../../parts/use-work.ts'
import { act } from '../../state/actions.ts'
import { say } from '../../words/say-any.ts'
import type { FieldFault } from '../games/game-faults.ts'
import type { Draft, PlayerDraft } from '../start/draft.ts'
import { PlayerFields } from '../start/PlayerFields.tsx'
import { draftToMend, faultsOfMending, mendingsOf } from './mend-view.ts'

/** Name, handicap and tee of every player, each behind a tap. */
export function MendPlayers({ outing }: { readonly outing: Outing }) {
  const draft = draftToMend(outing)
  const tees = [...outing.tees].map(([id, { name }]) => ({ id, name }))
  return (
    <section className="section" aria-label={say('start-players')}>
      <h2>{say('start-players')}</h2>
      {draft.players.map((player, place) => (
        <details key={player.id} className="family filled">
          <summary>
            <b>{player.name}</b> {figureWords(player)}
          </summary>
          <PlayerToMend key={JSON.stringify(player)} player={player} n={place + 1} draft={draft} tees={tees} />
        </details>
      ))}
    </section>
  )
}

const figureWords = ({ kind, figure }: PlayerDraft): string =>
  figure === '' ? '' : `${say(`start-kind-${kind}`)} ${figure}`

interface Props {
  readonly player: PlayerDraft
  readonly n: number
  readonly draft: Draft
  readonly tees: readonly { readonly id: string; readonly name: string }[]
}

/** A change by another phone starts the fields anew. */
function PlayerToMend({ player, n, draft, tees }: Props) {
  const [typed, setTyped] = useState(player)
  const [faults, setFaults] = useState<readonly FieldFault[]>([])
  const { isWorking, work } = useWork()
  const mendings = mendingsOf(player, typed)
  const save = (): void => {
    const found = faultsOfMending(draft, typed)
    setFaults(found)
    if (found.length > 0) return
    work(async () => {
      for (const each of mendings) await act(each.act, each.facts)
    })
  }
  return (
    <div className="group-box">
      <PlayerFields
        player={typed}
        n={n}
        tees={tees}
        faultAt={field => faults.find(each => each.field === field)?.text}
        onChange={changed => setTyped({ ...typed, ...changed })}
      />
      <button type="button" className="button" disabled={isWorking || mendings.length === 0} onClick={save}>
        {say('mend-player-save', { player: player.name })}
      </button>
    </div>
  )
}
