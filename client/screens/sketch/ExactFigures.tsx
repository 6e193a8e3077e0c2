import { say } from '../../words/say-any.ts'
import { NumberField } from '../bag/NumberField.tsx'

interface Figure {
  readonly name: string
  readonly label: string
  readonly value: number | null
  readonly from: number
  readonly to: number
}

interface Props {
  readonly figures: readonly Figure[]
  readonly onFigure: (name: string, amount: number) => void
}

/** The same figures typed, for who has measured them. */
export function ExactFigures({ figures, onFigure }: Props) {
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
