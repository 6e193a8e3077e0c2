import { type ComponentProps, useId } from 'react'
import { Label } from './Label.tsx'
import { typedText } from './typed-text.ts'

interface Props extends Omit<ComponentProps<'input'>, 'onChange' | 'id'> {
  readonly label: string
  readonly value: string
  readonly onValue: (value: string) => void
  readonly hint?: string | undefined
  readonly fault?: string | undefined
  /** False hides the label from the eye and keeps it as the name. */
  readonly hasLabel?: boolean
}

/** One line of text with its name, hint and fault. */
export function Field({ label, value, onValue, hint, fault, hasLabel = true, ...rest }: Props) {
  const id = useId()
  const hintId = hint || fault ? `${id}-hint` : undefined
  return (
    <div className="field">
      <label htmlFor={id} className={hasLabel ? undefined : 'hidden'}>
        <Label text={label} />
      </label>
      <input
        autoComplete="off"
        {...rest}
        id={id}
        value={value}
        dir="auto"
        onChange={event => onValue(typedText(event.target.value))}
        aria-invalid={fault ? true : undefined}
        aria-describedby={hintId}
      />
      {(hint || fault) && (
        <div id={hintId}>
          {fault && <p className="fault">{fault}</p>}
          {hint && <p className="quiet">{hint}</p>}
        </div>
      )}
    </div>
  )
}
