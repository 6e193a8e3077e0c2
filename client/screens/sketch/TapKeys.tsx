interface Props<Value extends string | number> {
  readonly label: string
  /** Null while none is chosen. */
  readonly value: Value | null
  readonly values: readonly Value[]
  /** The value itself where it is left out. */
  readonly textOf?: (value: Value) => string
  readonly onValue: (value: Value) => void
}

/** A value by one tap. Keys and no radios: an arrow on the keyboard writes nothing. */
export function TapKeys<Value extends string | number>({
  label,
  value,
  values,
  textOf = String,
  onValue,
}: Props<Value>) {
  return (
    <fieldset className="field">
      <legend>{label}</legend>
      <div className="choices amounts">
        {values.map(each => (
          <button
            key={each}
            type="button"
            className="button"
            aria-pressed={each === value}
            onClick={() => onValue(each)}
          >
            {textOf(each)}
          </button>
        ))}
      </div>
    </fieldset>
  )
}
