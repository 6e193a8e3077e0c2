import { say } from '../../words/say-any.ts'
import { TypedField } from './TypedField.tsx'

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

/** A whole number on a keypad of figures. */
export function NumberField({ value, from, to, onNumber, canBeEmpty = false, ...rest }: Props) {
  const parse = (text: string): number | null | undefined => {
    if (text.trim() === '') return canBeEmpty ? null : undefined
    const number = /^\d{1,3}$/.test(text.trim()) ? Number(text) : -1
    return number >= from && number <= to ? number : undefined
  }
  return (
    <TypedField
      {...rest}
      text={String(value ?? '')}
      parse={parse}
      onTyped={number => {
        if (number !== value) onNumber(number)
      }}
      fault={say('bag-carry-range', { from, to })}
      inputMode="numeric"
      maxLength={3}
    />
  )
}
