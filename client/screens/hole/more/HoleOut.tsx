import { useState } from 'react'
import { holeKey } from '#core/card/score.ts'
import { type HoleOutMethod, holeOutMethods } from '#core/formats/happenings.ts'
import { holeOutFacts } from '#core/outing/acts-ball.ts'
import { Choice } from '../../../parts/Choice.tsx'
import { Field } from '../../../parts/Field.tsx'
import { useWork } from '../../../parts/use-work.ts'
import { act } from '../../../state/actions.ts'
import { say } from '../../../words/say-any.ts'
import type { MoreProps } from './MoreOnHole.tsx'

/** The desk's: a hole that cannot be played, for the whole outing. */
export function HoleOut({ outing, at }: MoreProps) {
  const noted = outing.notes.holesOut.get(holeKey(at))
  const [counts, setCounts] = useState<HoleOutMethod | null>(noted?.counts ?? null)
  const [reason, setReason] = useState(noted?.reason ?? '')
  const { isWorking, work } = useWork()
  const value = counts && { counts, reason: reason.trim() || null }
  const isSame = counts === (noted?.counts ?? null) && (value?.reason ?? null) === (noted?.reason ?? null)
  return (
    <section className="section" aria-label={say('hole-out-title')}>
      <h2>{say('hole-out-title')}</h2>
      <Choice
        label={say('hole-out-of', { hole: at.hole })}
        value={counts ?? ''}
        options={[
          { value: '', text: say('hole-out-in-play') },
          ...holeOutMethods.map(each => ({ value: each as string, text: say(`hole-out-${each}`) })),
        ]}
        onValue={each => setCounts(holeOutMethods.find(method => method === each) ?? null)}
      />
      {counts && <Field label={say('reason')} value={reason} maxLength={200} onValue={setReason} />}
      <button
        type="button"
        className="button"
        disabled={isWorking || isSame}
        onClick={() => work(() => act('hole out of play', holeOutFacts(at, value)))}
      >
        {say('hole-out-do', { hole: at.hole })}
      </button>
    </section>
  )
}
