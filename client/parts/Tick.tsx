interface Props {
  readonly label: string
  readonly isOn: boolean
  readonly onChange: (isOn: boolean) => void
  readonly isDisabled?: boolean
}

/** On or off, by its name. */
export function Tick({ label, isOn, onChange, isDisabled = false }: Props) {
  return (
    <label className="tick-line">
      <input type="checkbox" checked={isOn} disabled={isDisabled} onChange={event => onChange(event.target.checked)} />
      {label}
    </label>
  )
}
