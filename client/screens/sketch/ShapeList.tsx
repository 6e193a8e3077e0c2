import { useEffect, useRef } from 'react'
import type { HoleSketch, ShapeSketch } from '#core/outing/sketch.ts'
import type { ShapeId } from '#core/values/ids.ts'
import { say } from '../../words/say-any.ts'
import { shapeLine, shapeName } from '../../words/sketch-text.ts'
import { ShapeFields } from './ShapeFields.tsx'
import { Swatch } from './SketchDrawing.tsx'
import type { HoleDrawn } from './sketch-view.ts'

interface Props {
  readonly sketch: HoleSketch
  readonly drawn: HoleDrawn
  /** The shape whose figures are open. */
  readonly open: ShapeId | null
  readonly onOpen: (shape: ShapeId | null) => void
  /** What a shape shall be, null for away; left out where this phone only reads. */
  readonly onShape?: (shape: ShapeId, value: ShapeSketch | null) => void
}

/** Every shape in words, its figures behind a tap. */
export function ShapeList({ sketch, drawn, open, onOpen, onShape }: Props) {
  if (sketch.shapes.size === 0) return <p className="quiet">{say('sketch-none')}</p>
  return (
    <>
      <p className="quiet">{say('sketch-unit', { unit: say(`unit-${drawn.unit}`) })}</p>
      <ol className="lines">
        {[...sketch.shapes].map(([id, shape], place) => (
          <li key={id} className="stack">
            <p className="shape-line">
              <Swatch kind={shape.kind} />
              <span>
                <b>{place + 1}</b> {shapeLine(shape)}
                {shape.unit !== drawn.unit && ` (${say(`unit-${shape.unit}`)})`}
              </span>
            </p>
            {onShape && (
              <button
                type="button"
                className="button"
                aria-expanded={id === open}
                onClick={() => onOpen(id === open ? null : id)}
              >
                {say(id === open ? 'sketch-close' : 'sketch-change', { shape: shapeName(shape) })}
              </button>
            )}
            {onShape && id === open && <OpenShape shape={shape} drawn={drawn} onChange={value => onShape(id, value)} />}
          </li>
        ))}
      </ol>
    </>
  )
}

interface OpenProps {
  readonly shape: ShapeSketch
  readonly drawn: HoleDrawn
  readonly onChange: (shape: ShapeSketch | null) => void
}

/** The keyboard goes on in the figures of a shape that was just put in. */
function OpenShape(props: OpenProps) {
  const box = useRef<HTMLFieldSetElement>(null)
  useEffect(() => {
    box.current?.focus({ preventScroll: true })
    box.current?.scrollIntoView({ block: 'nearest' })
  }, [])
  return (
    <fieldset ref={box} className="stack" tabIndex={-1}>
      <legend className="hidden">{shapeName(props.shape)}</legend>
      <ShapeFields {...props} />
    </fieldset>
  )
}
