import { useState } from 'react'
import { mendHoleFacts } from '#core/outing/acts-mend.ts'
import type { CourseHole } from '#core/outing/facts.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { TeeId } from '#core/values/ids.ts'
import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { Select } from '../../parts/Select.tsx'
import { useWork } from '../../parts/use-work.ts'
import { act } from '../../state/actions.ts'
import { say } from '../../words/say-any.ts'
import { faultOfNumber } from '../games/game-faults.ts'

const pars = [3, 4, 5, 6, 7] as const

/** Par and stroke index of one hole, of the course or of a tee with a card of its own. */
export function MendHole({ outing }: { readonly outing: Outing }) {
  const holes = [...outing.holes.keys()]
  const [hole, setHole] = useState(holes[0] ?? 1)
  const [tee, setTee] = useState<TeeId | null>(null)
  const printed = holeOf(outing, hole, tee)
  const tees = [...outing.tees].map(([id, { name }]) => ({ value: id as string, text: name }))
  return (
    <section className="section" aria-label={say('mend-hole-title')}>
      <h2>{say('mend-hole-title')}</h2>
      <div className="in-columns">
        <Select
          label={say('mend-hole')}
          value={String(hole)}
          options={holes.map(each => ({ value: String(each), text: say('hole-n', { hole: each }) }))}
          onValue={value => setHole(Number(value))}
        />
        {tees.length > 0 && (
          <Select
            label={say('mend-hole-of')}
            value={tee ?? ''}
            options={[{ value: '', text: say('mend-hole-all') }, ...tees]}
            onValue={value => setTee(value === '' ? null : (value as TeeId))}
          />
        )}
      </div>
      {printed && (
        <HoleToMend key={`${hole} ${tee} ${printed.par} ${printed.index}`} {...{ outing, hole, tee, printed }} />
      )}
    </section>
  )
}

/** As the course has it, or where a tee's card differs as that does. */
function holeOf(outing: Outing, hole: number, of: TeeId | null): CourseHole | null {
  const course = outing.holes.get(hole)
  const tee = of === null ? undefined : outing.tees.get(of)
  if (course === undefined) return null
  return { par: tee?.pars?.[hole - 1] ?? course.par, index: tee?.indexes?.[hole - 1] ?? course.index }
}

interface Props {
  readonly outing: Outing
  readonly hole: number
  readonly tee: TeeId | null
  readonly printed: CourseHole
}

function HoleToMend({ outing, hole, tee, printed }: Props) {
  const [par, setPar] = useState(printed.par)
  const [index, setIndex] = useState(String(printed.index))
  const { isWorking, work } = useWork()
  const faults = faultOfNumber('index', say('start-hole-index', { hole }), index, 1, 18)
  const isSame = par === printed.par && index === String(printed.index)
  const twin = [...outing.holes].find(([other, each]) => other !== hole && String(each.index) === index)
  const save = (): void =>
    work(() => act('hole mended', mendHoleFacts(outing, hole, { par, index: Number(index) }, tee)))
  return (
    <>
      <Choice
        label={say('par')}
        value={String(par)}
        options={pars.map(each => ({ value: String(each), text: String(each) }))}
        onValue={value => setPar(Number(value))}
      />
      <Field
        label={say('start-hole-index', { hole })}
        inputMode="numeric"
        maxLength={2}
        value={index}
        onValue={setIndex}
        fault={faults[0]?.text}
        hint={twin && !isSame ? say('mend-index-twin', { index, hole: twin[0] }) : undefined}
      />
      <button type="button" className="button" disabled={isWorking || isSame || faults.length > 0} onClick={save}>
        {say('mend-hole-save', { hole })}
      </button>
    </>
  )
}
