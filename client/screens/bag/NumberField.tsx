import { useState } from 'react'
import { Field } from '../../parts/Field.tsx'
import { say } from '../../words/say-any.ts'

interface Props {
  readonly label: string
  readonly value: number | null
  readonly from: number
  readonly to: number
  /** A whole number in the range; null where the field was emptied and may be. */
  readonly onNumber: (value: number | null) => void
  readonly canBeEmpty?: boolean
  readonly hint?: string
  readonly hasLabel?: boolean
}

/** A whole number on a keypad of figures. It stands as soon as it is one: a phone that goes into the pocket has kept it. */
export function NumberField({ label, value, from, to, onNumber, canBeEmpty = false, hint, hasLabel }: Props) {
  const [typed, setTyped] = useState<string | null>(null)
  const [isInside, setInside] = useState(false)
  const parse = (text: string): number | null | undefined => {
    if (text.trim() === '') return canBeEmpty ? null : undefined
    const number = /^\d{1,3}$/.test(text.trim()) ? Number(text) : -1
    return number >= from && number <= to ? number : undefined
  }
  const isWrong = typed !== null && parse(typed) === undefined
  return (
    <Field
      label={label}
      value={typed ?? String(value ?? '')}
      inputMode="numeric"
      maxLength={3}
      hint={hint}
      fault={isWrong && !isInside ? say('bag-carry-range', { from, to }) : undefined}
      {...(hasLabel !== undefined && { hasLabel })}
      onFocus={() => setInside(true)}
      onBlur={() => {
        setInside(false)
        if (!isWrong) setTyped(null)
      }}
      onValue={text => {
        setTyped(text)
        const number = parse(text)
        if (number !== undefined && number !== value) onNumber(number)
      }}
    />
  )
}
