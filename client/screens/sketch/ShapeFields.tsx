import { lineEnds, type ShapeSketch } from '#core/outing/sketch.ts'
import { say } from '../../words/say-any.ts'
import { ExactFigures } from './ExactFigures.tsx'
import { amountsOf, type HoleDrawn, toldFrom } from './sketch-view.ts'
import { TapKeys } from './TapKeys.tsx'

interface Props {
  readonly shape: ShapeSketch
  readonly drawn: HoleDrawn
  readonly onChange: (shape: ShapeSketch | null) => void
}

/** The figures of one shape, each by a tap or typed. */
export function ShapeFields({ shape, drawn, onChange }: Props) {
  const amounts = amountsOf(shape, drawn)
  const labels = labelsOf(shape)
  const put = (name: FigureName, amount: number): void => onChange({ ...shape, [name]: amount } as ShapeSketch)
  const named = figureNames.filter(name => amounts[name].length > 0)
  return (
    <>
      {shape.by === 'line' && drawn.length !== null && (
        <TapKeys
          label={say('sketch-from')}
          value={shape.from}
          values={lineEnds}
          textOf={end => say(`sketch-from-${end}`)}
          onValue={end => onChange(toldFrom(shape, end, drawn))}
        />
      )}
      {named.map(name => (
        <TapKeys
          key={name}
          label={labels[name]}
          value={figureOf(shape, name)}
          values={amounts[name]}
          onValue={amount => put(name, amount)}
        />
      ))}
      <ExactFigures
        figures={named.map(name => ({ name, label: labels[name], value: figureOf(shape, name), ...rangeOf(name) }))}
        onFigure={put}
      />
      <button type="button" className="button" onClick={() => onChange(null)}>
        {say('sketch-take-away')}
      </button>
    </>
  )
}

const figureNames = ['distance', 'width', 'gap', 'length'] as const
type FigureName = (typeof figureNames)[number]

const figureOf = (shape: ShapeSketch, name: FigureName): number =>
  name === 'distance' ? (shape.by === 'line' ? shape.distance : 0) : shape[name]

const rangeOf = (name: FigureName) => ({ from: name === 'width' || name === 'length' ? 1 : 0, to: 900 })

function labelsOf(shape: ShapeSketch): Readonly<Record<FigureName, string>> {
  return {
    distance: say(shape.by === 'line' && shape.from === 'tee' ? 'sketch-distance-tee' : 'sketch-distance-green'),
    gap: say(shape.by === 'green' ? 'sketch-gap-green' : 'sketch-gap-line'),
    width: say('sketch-reach'),
    length: say('sketch-length'),
  }
}
