import { useEffect, useRef, useState } from 'react'
import { type HoleSketch, mostShapes, type ShapeKind, shapeKinds } from '#core/outing/sketch.ts'
import { say } from '../../words/say-any.ts'
import { placeText } from '../../words/sketch-text.ts'
import { Swatch } from './SketchDrawing.tsx'
import { fairwayPlace, type ShapePlace, shapePlaces } from './sketch-view.ts'

interface Props {
  readonly sketch: HoleSketch
  readonly onNew: (kind: ShapeKind, place: ShapePlace) => void
}

/** Two taps put a shape in: what it is, and where. It stands at once, at a usual size. */
export function NewShape({ sketch, onNew }: Props) {
  const [kind, setKind] = useState<ShapeKind | null>(null)
  const places = useRef<HTMLFieldSetElement>(null)
  useEffect(() => {
    if (kind !== null) places.current?.focus()
  }, [kind])
  if (sketch.shapes.size >= mostShapes) return <p className="notice">{fullText(sketch.shapes.size)}</p>
  const choose = (chosen: ShapeKind): void => (chosen === 'fairway' ? onNew(chosen, fairwayPlace) : setKind(chosen))
  const put = (place: ShapePlace): void => {
    if (kind !== null) onNew(kind, place)
    setKind(null)
  }
  if (kind === null) {
    return (
      <div className="choices">
        {shapeKinds.map(each => (
          <button key={each} type="button" className="button" onClick={() => choose(each)}>
            <Swatch kind={each} />
            {say(`shape-${each}`)}
          </button>
        ))}
      </div>
    )
  }
  return (
    <fieldset ref={places} className="field" tabIndex={-1}>
      <legend>{whereText(kind)}</legend>
      <div className="choices">
        {shapePlaces.map(place => (
          <button key={`${place.by} ${place.side}`} type="button" className="button" onClick={() => put(place)}>
            {placeText(place)}
          </button>
        ))}
        <button type="button" className="button" onClick={() => setKind(null)}>
          {say('sketch-not-this')}
        </button>
      </div>
    </fieldset>
  )
}

const whereText = (kind: ShapeKind): string => say('sketch-where', { kind: say(`shape-${kind}`) })

const fullText = (n: number): string => (n > mostShapes ? say('sketch-too-many', { n }) : say('sketch-full'))
