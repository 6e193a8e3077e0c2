interface Props {
  readonly label: string
  /** Null while none is chosen. */
  readonly value: number | null
  readonly amounts: readonly number[]
  /** The figure itself where it is left out. */
  readonly textOf?: (amount: number) => string
  readonly onAmount: (amount: number) => void
}

/** A figure by one tap. Keys and no radios: an arrow on the keyboard writes nothing. */
export function AmountKeys({ label, value, amounts, textOf = String, onAmount }: Props) {
  if (amounts.length === 0) return null
  return (
    <fieldset className="field">
      <legend>{label}</legend>
      <div className="choices amounts">
        {amounts.map(amount => (
          <button
            key={amount}
            type="button"
            className="button"
            aria-pressed={amount === value}
            onClick={() => onAmount(amount)}
          >
            {textOf(amount)}
          </button>
        ))}
      </div>
    </fieldset>
  )
}
