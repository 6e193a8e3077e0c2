import { lineEnds, type ShapeSketch } from '#core/outing/sketch.ts'
import { say } from '../../words/say-any.ts'
import { AmountKeys } from './AmountKeys.tsx'
import { ExactFigures } from './ExactFigures.tsx'
import { amountsOf, type HoleDrawn, toldFrom } from './sketch-view.ts'

interface Props {
  readonly shape: ShapeSketch
  readonly drawn: HoleDrawn
  readonly onChange: (shape: ShapeSketch | null) => void
}

/** The figures of one shape, each by a tap or typed. */
export function ShapeFields({ shape, drawn, onChange }: Props) {
  const amounts = amountsOf(shape, drawn)
  const labels = labelsOf(shape)
  const put = (changed: Partial<Record<'distance' | 'gap' | 'width' | 'length', number>>): void =>
    onChange({ ...shape, ...changed } as ShapeSketch)
  const named = (['distance', 'width', 'gap', 'length'] as const).filter(name => amounts[name].length > 0)
  return (
    <>
      {shape.by === 'line' && drawn.length !== null && <ToldFrom shape={shape} drawn={drawn} onChange={onChange} />}
      {named.map(name => (
        <AmountKeys
          key={name}
          label={labels[name]}
          value={figureOf(shape, name)}
          amounts={amounts[name]}
          onAmount={amount => put({ [name]: amount })}
        />
      ))}
      <ExactFigures
        figures={named.map(name => ({ name, label: labels[name], value: figureOf(shape, name), ...rangeOf(name) }))}
        onFigure={(name, amount) => put({ [name]: amount })}
      />
      <button type="button" className="button" onClick={() => onChange(null)}>
        {say('sketch-take-away')}
      </button>
    </>
  )
}

type FigureName = 'distance' | 'width' | 'gap' | 'length'

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

type OnLine = Extract<ShapeSketch, { by: 'line' }>

function ToldFrom({ shape, drawn, onChange }: Props & { readonly shape: OnLine }) {
  return (
    <fieldset className="field">
      <legend>{say('sketch-from')}</legend>
      <div className="choices">
        {lineEnds.map(end => (
          <button
            key={end}
            type="button"
            className="button"
            aria-pressed={shape.from === end}
            onClick={() => onChange(toldFrom(shape, end, drawn))}
          >
            {say(`sketch-from-${end}`)}
          </button>
        ))}
      </div>
    </fieldset>
  )
}
