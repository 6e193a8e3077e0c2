import { Select } from '../../parts/Select.tsx'

interface Props<T extends string> {
  readonly label: string
  readonly value: T | null
  readonly values: readonly T[]
  readonly textOf: (value: T) => string
  readonly onValue: (value: T) => void
}

/** One method out of the list of a kind. */
export function OneOf<T extends string>({ label, value, values, textOf, onValue }: Props<T>) {
  const choose = (text: string): void => {
    const found = values.find(each => each === text)
    if (found !== undefined) onValue(found)
  }
  return (
    <Select
      label={label}
      value={value ?? ''}
      options={values.map(each => ({ value: each, text: textOf(each) }))}
      onValue={choose}
    />
  )
}
