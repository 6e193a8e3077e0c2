import { useId } from 'react'
import { Label } from './Label.tsx'

export interface Option {
  readonly value: string
  readonly text: string
}

interface Props {
  readonly label: string
  readonly value: string
  readonly options: readonly Option[]
  readonly onValue: (value: string) => void
  readonly fault?: string | undefined
}

/** One of a list, by its name. */
export function Select({ label, value, options, onValue, fault }: Props) {
  const id = useId()
  const faultId = fault ? `${id}-fault` : undefined
  return (
    <div className="field">
      <label htmlFor={id}>
        <Label text={label} />
      </label>
      <select
        id={id}
        value={value}
        onChange={event => onValue(event.target.value)}
        aria-invalid={fault ? true : undefined}
        aria-describedby={faultId}
      >
        {options.map(option => (
          <option key={option.value} value={option.value}>
            {option.text}
          </option>
        ))}
      </select>
      {fault && (
        <p id={faultId} className="fault">
          {fault}
        </p>
      )}
    </div>
  )
}
