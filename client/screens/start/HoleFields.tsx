import { Field } from '../../parts/Field.tsx'
import { say } from '../../words/say-any.ts'
import { type HoleDraft, holesInPlay } from './draft.ts'
import type { SectionProps } from './section.ts'

const pars = [3, 4, 5, 6] as const

/** One row a hole: its par by a tap, its stroke index. */
export function HoleFields({ draft, change, faultAt }: SectionProps) {
  const changeHole = (place: number, changed: Partial<HoleDraft>): void =>
    change({ holes: draft.holes.map((hole, at) => (at === place ? { ...hole, ...changed } : hole)) })
  return (
    <ol className="hole-fields">
      <li aria-hidden="true" className="quiet">
        <span>{say('hole')}</span>
        <span>{say('par')}</span>
        <span>{say('index')}</span>
      </li>
      {holesInPlay(draft)
        .map((hole, place) => ({ hole, number: place + 1 }))
        .map(({ hole, number }) => (
          <HoleRow
            key={number}
            number={number}
            hole={hole}
            onChange={changed => changeHole(number - 1, changed)}
            fault={faultAt(`hole-${number}`)}
          />
        ))}
    </ol>
  )
}

interface RowProps {
  readonly number: number
  readonly hole: HoleDraft
  readonly onChange: (changed: Partial<HoleDraft>) => void
  readonly fault: string | undefined
}

function HoleRow({ number, hole, onChange, fault }: RowProps) {
  return (
    <li>
      <span className="hole-number">{number}</span>
      <span className="par-keys">
        {pars.map(par => (
          <button
            key={par}
            type="button"
            className="button"
            aria-pressed={par === hole.par}
            aria-label={say('start-hole-par', { hole: number, par })}
            onClick={() => onChange({ par })}
          >
            {par}
          </button>
        ))}
      </span>
      <Field
        label={say('start-hole-index', { hole: number })}
        hasLabel={false}
        inputMode="numeric"
        maxLength={2}
        value={hole.index}
        onValue={index => onChange({ index })}
        fault={fault && say('fault-here')}
      />
    </li>
  )
}
