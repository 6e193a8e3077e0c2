import { say } from '../../words/say-any.ts'
import { NumberField } from '../bag/NumberField.tsx'

interface Figure<Name extends string> {
  readonly name: Name
  readonly label: string
  readonly value: number | null
  readonly from: number
  readonly to: number
}

interface Props<Name extends string> {
  readonly figures: readonly Figure<Name>[]
  readonly onFigure: (name: Name, amount: number) => void
}

/** The same figures typed, for who has measured them. */
export function ExactFigures<Name extends string>({ figures, onFigure }: Props<Name>) {
  return (
    <details>
      <summary>{say('sketch-exact')}</summary>
      <div className="in-columns">
        {figures.map(({ name, ...figure }) => (
          <NumberField key={name} {...figure} onNumber={amount => amount !== null && onFigure(name, amount)} />
        ))}
      </div>
    </details>
  )
}
