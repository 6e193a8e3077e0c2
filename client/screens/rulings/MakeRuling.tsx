import { useState } from 'react'
import type { NewFact } from '#core/outing/acts.ts'
import { joinFacts } from '#core/outing/acts-ball.ts'
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
import { say } from '../../words/say-any.ts'
import type { FieldFault } from '../games/game-faults.ts'
import { holesFor } from './holes-for.ts'
import { RulingGames } from './RulingGames.tsx'
import { emptyRuling, faultsOfRuling, type RulingDraft, rulingKinds, rulingsOfDraft } from './ruling-draft.ts'

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
      await act('ruling made', factsOfDraft(outing, draft))
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
          { value: '', text: say(kind === 'no-penalty' ? 'ruling-nobody' : 'choose') },
          ...[...outing.balls.values()].map(({ id, name }) => ({ value: id as string, text: name })),
        ]}
        onValue={ball => change({ ball })}
        fault={faultAt('ball')}
      />
      {kind === 'disqualified' && (
        <Select
          label={say('ruling-also')}
          value={draft.also}
          options={[
            { value: '', text: say('ruling-nobody-else') },
            ...[...outing.balls.values()].map(({ id, name }) => ({ value: id as string, text: name })),
          ]}
          onValue={also => change({ also })}
        />
      )}
      {kind === 'no-penalty' && draft.joinsAt !== '' && (
        <Select
          label={say('ruling-joins')}
          value={draft.joinsAt}
          options={[{ value: '', text: say('ruling-joins-not') }, ...holesFor(outing, draft.ball)]}
          onValue={joinsAt => change({ joinsAt })}
        />
      )}
      {(kind === 'penalty' || kind === 'disqualified') && (
        <Select
          label={say('ruling-hole')}
          value={draft.hole}
          options={[{ value: '', text: say('ruling-round') }, ...holesFor(outing, draft.ball)]}
          onValue={hole => change({ hole })}
        />
      )}
      {(kind === 'penalty' || kind === 'plays-off' || kind === 'net-off') && (
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
      <Field label={say('reason')} value={draft.reason} maxLength={200} onValue={reason => change({ reason })} />
      <button type="button" className="button loud" disabled={isWorking} onClick={make}>
        {say('ruling-do')}
      </button>
    </section>
  )
}

/** The ruling, for each whom it concerns, and the hole from which a late ball plays, in one act. */
function factsOfDraft(outing: Outing, draft: RulingDraft): readonly NewFact[] {
  const rulings = rulingsOfDraft(draft).flatMap(ruling => rulingFacts(createId() as RulingId, ruling))
  const [hole = 0, lap = 0] = draft.joinsAt.split('/').map(Number)
  const isLate = draft.kind === 'no-penalty' && draft.joinsAt !== ''
  return isLate ? [...rulings, ...joinFacts(outing, draft.ball as BallId, { hole, lap }, null)] : rulings
}
