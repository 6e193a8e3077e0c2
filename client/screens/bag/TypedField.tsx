import { useState } from 'react'
import { Field } from '../../parts/Field.tsx'

interface Props<Value> {
  readonly label: string
  /** What stands, as it is written. */
  readonly text: string
  /** Undefined where what is typed is none. */
  readonly parse: (typed: string) => Value | undefined
  readonly onTyped: (value: Value) => void
  readonly fault: string
  readonly inputMode: 'numeric' | 'decimal'
  readonly maxLength: number
  readonly hint?: string | undefined
  readonly hasLabel?: boolean
}

/**
 * A figure on a keypad. It stands as soon as it is one: a phone that goes into the pocket has kept it. What is wrong is
 * said when the field is left.
 */
export function TypedField<Value>({ text, parse, onTyped, fault, ...rest }: Props<Value>) {
  const [typed, setTyped] = useState<string | null>(null)
  const [isInside, setInside] = useState(false)
  const isWrong = typed !== null && parse(typed) === undefined
  return (
    <Field
      {...rest}
      value={typed ?? text}
      fault={isWrong && !isInside ? fault : undefined}
      onFocus={() => setInside(true)}
      onBlur={() => {
        setInside(false)
        if (!isWrong) setTyped(null)
      }}
      onValue={now => {
        setTyped(now)
        const value = parse(now)
        if (value !== undefined) onTyped(value)
      }}
    />
  )
}
