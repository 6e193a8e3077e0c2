import { useState } from 'react'
import { holeKey } from '#core/card/score.ts'
import { rulingFacts } from '#core/outing/acts-card.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId, RulingId } from '#core/values/ids.ts'
import { createId } from '../../device/random-ids.ts'
import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { Select } from '../../parts/Select.tsx'
import { Tick } from '../../parts/Tick.tsx'
import { useWork } from '../../parts/use-work.ts'
import { act } from '../../state/actions.ts'
import { say } from '../../words/say.ts'
import type { FieldFault } from '../games/game-faults.ts'
import { RulingGames } from './RulingGames.tsx'
import { emptyRuling, faultsOfRuling, type RulingDraft, rulingKinds, rulingOfDraft } from './ruling-draft.ts'

interface Props {
  readonly outing: Outing
  readonly draft: RulingDraft
  readonly onDraft: (draft: RulingDraft) => void
}

/** The fields of a ruling and the button that makes it. */
export function MakeRuling({ outing, draft, onDraft }: Props) {
  const [faults, setFaults] = useState<readonly FieldFault[]>([])
  const { isWorking, work } = useWork()
  const { kind } = draft
  const change = (changed: Partial<RulingDraft>) => onDraft({ ...draft, ...changed })
  const faultAt = (field: string) => faults.find(each => each.field === field)?.text
  const make = (): void => {
    const found = faultsOfRuling(draft)
    setFaults(found)
    if (found.length > 0) return
    work(async () => {
      await act('ruling made', rulingFacts(createId() as RulingId, rulingOfDraft(draft)))
      onDraft(emptyRuling)
    })
  }
  return (
    <section className="section" aria-label={say('rulings-make')}>
      <h2>{say('rulings-make')}</h2>
      <Choice
        label={say('ruling-kind')}
        value={kind}
        options={rulingKinds.map(each => ({ value: each, text: say(`ruling-${each}`) }))}
        onValue={value => change({ kind: rulingKinds.find(each => each === value) ?? kind })}
      />
      <Select
        label={say('ruling-ball')}
        value={draft.ball}
        options={[
          { value: '', text: say(kind === 'no-penalty' ? 'ruling-nobody' : 'seen-none') },
          ...[...outing.balls.values()].map(({ id, name }) => ({ value: id as string, text: name })),
        ]}
        onValue={ball => change({ ball })}
        fault={faultAt('ball')}
      />
      {(kind === 'penalty' || kind === 'disqualified') && (
        <Select
          label={say('ruling-hole')}
          value={draft.hole}
          options={[{ value: '', text: say('ruling-round') }, ...holesFor(outing, draft.ball)]}
          onValue={hole => change({ hole })}
        />
      )}
      {(kind === 'penalty' || kind === 'plays-off') && (
        <Field
          label={say(kind === 'penalty' ? 'ruling-strokes' : 'ruling-handicap')}
          inputMode="numeric"
          value={draft.strokes}
          onValue={strokes => change({ strokes })}
          fault={faultAt('strokes')}
        />
      )}
      {kind === 'penalty' && (
        <Tick label={say('ruling-hole-lost')} isOn={draft.isHoleLost} onChange={isHoleLost => change({ isHoleLost })} />
      )}
      <RulingGames outing={outing} games={draft.games} onGames={games => change({ games })} fault={faultAt('games')} />
      <Field label={say('ruling-rule')} value={draft.rule} maxLength={80} onValue={rule => change({ rule })} />
      <Field label={say('ruling-reason')} value={draft.reason} maxLength={200} onValue={reason => change({ reason })} />
      <button type="button" className="button loud" disabled={isWorking} onClick={make}>
        {say('ruling-do')}
      </button>
    </section>
  )
}

/** The holes of the ball's group in order of play. */
function holesFor(outing: Outing, ball: string): readonly { readonly value: string; readonly text: string }[] {
  const group = outing.balls.get(ball as BallId)?.group ?? [...outing.groups.keys()][0]
  const { round = [], extra = [] } = (group && outing.groups.get(group)) || {}
  return [...round, ...extra].map(at => ({ value: holeKey(at), text: String(at.hole) }))
}
