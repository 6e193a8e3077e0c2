import { useId } from 'react'
import { Label } from './Label.tsx'
import type { Option } from './Select.tsx'

interface Props {
  readonly label: string
  readonly value: string
  readonly options: readonly Option[]
  readonly onValue: (value: string) => void
  readonly hasLabel?: boolean
}

/** One of a few, all in sight: radios drawn as keys. */
export function Choice({ label, value, options, onValue, hasLabel = true }: Props) {
  const name = useId()
  return (
    <fieldset className="field">
      <legend className={hasLabel ? undefined : 'hidden'}>
        <Label text={label} />
      </legend>
      <div className="choices">
        {options.map(option => (
          <label key={option.value} className="button">
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === value}
              onChange={() => onValue(option.value)}
            />
            {option.text}
          </label>
        ))}
      </div>
    </fieldset>
  )
}
