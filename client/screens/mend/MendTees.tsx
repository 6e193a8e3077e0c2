import { useState } from 'react'
import { mendTeeFacts } from '#core/outing/acts-mend.ts'
import { teeOfPlain } from '#core/outing/facts-of-plain.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { TeeId } from '#core/values/ids.ts'
import { useWork } from '../../parts/use-work.ts'
import { act } from '../../state/actions.ts'
import { say } from '../../words/say-any.ts'
import type { FieldFault } from '../games/game-faults.ts'
import { faultsOfTee } from '../start/draft-faults.ts'
import { plainTee } from '../start/facts-of-draft.ts'
import { TeeFields } from '../start/TeeFields.tsx'
import { draftToMend, type Mending } from './mend-view.ts'

/** Ratings and lengths put right, or typed in after the start; a tee more, or one fewer where nobody plays from it. */
export function MendTees({ outing }: { readonly outing: Outing }) {
  const before = draftToMend(outing)
  const [tees, setTees] = useState(before.tees)
  const [faults, setFaults] = useState<readonly FieldFault[]>([])
  const { isWorking, work } = useWork()
  const draft = { ...before, tees }
  const mendings = mendingsOfTees(outing, draft)
  const save = (): void => {
    const found = tees.flatMap((tee, place) => faultsOfTee(draft, tee, place))
    setFaults(found)
    if (found.length > 0) return
    work(async () => {
      for (const each of mendings) await act(each.act, each.facts)
    })
  }
  return (
    <section className="section" aria-label={say('mend-tees-title')}>
      <details className="filled" open={faults.length > 0 || undefined}>
        <summary>
          <b>{say('mend-tees-title')}</b>
        </summary>
        <div className="stack">
          <TeeFields
            draft={draft}
            change={changed => setTees(changed.tees ?? tees)}
            faultAt={field => faults.find(each => each.field === field)?.text}
          />
          <button type="button" className="button" disabled={isWorking || mendings.length === 0} onClick={save}>
            {say('mend-tees-save')}
          </button>
        </div>
      </details>
    </section>
  )
}

/** One act a tee that differs. */
function mendingsOfTees(outing: Outing, { tees, length }: ReturnType<typeof draftToMend>): readonly Mending[] {
  const changed = tees.flatMap((tee): Mending[] => {
    const value = teeOfPlain(plainTee(tee, length))
    const isSame = JSON.stringify(value) === JSON.stringify(inOrder(outing, tee.id as TeeId))
    return isSame ? [] : [{ act: 'tee mended', facts: mendTeeFacts(tee.id as TeeId, value) }]
  })
  const isPlayed = (tee: TeeId): boolean => [...outing.players.values()].some(player => player.tee === tee)
  const gone = [...outing.tees.keys()].filter(id => !tees.some(tee => tee.id === id) && !isPlayed(id))
  return [...changed, ...gone.map(tee => ({ act: 'tee taken away', facts: mendTeeFacts(tee, null) }))]
}

/** The fields in the order in which a typed tee has them. */
function inOrder(outing: Outing, id: TeeId): object | null {
  const tee = outing.tees.get(id)
  if (tee === undefined) return null
  const { name, ratings, frontRatings, backRatings, pars, indexes, lengths } = tee
  const rated = (of: typeof ratings) =>
    of && { courseRatingTenths: of.courseRatingTenths, slope: of.slope, par: of.par }
  return {
    name,
    ratings: rated(ratings),
    frontRatings: rated(frontRatings),
    backRatings: rated(backRatings),
    pars,
    indexes,
    lengths: lengths && { unit: lengths.unit, byHole: lengths.byHole },
  }
}
