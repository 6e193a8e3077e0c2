import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { say } from '../../words/say-any.ts'
import type { TeeDraft } from './draft.ts'
import type { SectionProps } from './section.ts'
import { lengthTexts } from './tee-draft.ts'

interface Props extends Pick<SectionProps, 'faultAt'> {
  readonly tee: TeeDraft
  readonly n: number
  readonly holes: number
  readonly onChange: (changed: Partial<TeeDraft>) => void
}

/** The length of every hole from a tee, behind a tap: no game needs them. */
export function LengthFields({ tee, n, holes, faultAt, onChange }: Props) {
  const texts = lengthTexts(tee, holes)
  const fault = faultAt(`${tee.id}-lengths`)
  const changeLength = (place: number, text: string): void =>
    onChange({ lengths: texts.map((each, at) => (at === place ? text : each)) })
  return (
    <details open={fault !== undefined || undefined}>
      <summary>{say('start-tee-lengths', { n })}</summary>
      {fault && <p className="fault">{fault}</p>}
      <Choice
        label={say('start-tee-unit', { n })}
        hasLabel={false}
        value={tee.unit ?? 'yards'}
        options={(['yards', 'metres'] as const).map(value => ({ value, text: say(`unit-${value}`) }))}
        onValue={value => onChange({ unit: value === 'metres' ? 'metres' : 'yards' })}
      />
      <ol className="length-fields">
        {texts
          .map((text, place) => ({ text, hole: place + 1 }))
          .map(({ text, hole }) => (
            <li key={hole}>
              <span aria-hidden="true">{hole}</span>
              <Field
                label={say('start-tee-length', { n, hole })}
                hasLabel={false}
                inputMode="numeric"
                maxLength={3}
                value={text}
                onValue={value => changeLength(hole - 1, value)}
              />
            </li>
          ))}
      </ol>
    </details>
  )
}
