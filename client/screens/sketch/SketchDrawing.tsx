import { type ReactNode, useId } from 'react'
import { type GreenSketch, type HoleSketch, type ShapeKind, shapeKinds } from '#core/outing/sketch.ts'
import type { ShapeId } from '#core/values/ids.ts'
import { say } from '../../words/say-any.ts'
import { sketchLines } from '../../words/sketch-text.ts'
import { greenDrawn, type HoleDrawn, type ShapeDrawn, shapesDrawn } from './sketch-view.ts'

interface Props {
  readonly hole: number
  readonly sketch: HoleSketch
  readonly drawn: HoleDrawn
  readonly open: ShapeId | null
}

/** Units shown on either side of the line at most, and behind the green and the tee. */
const besideLine = 60
const behind = 30
/** A short hole is shown no wider than this share of its height, so that the green has room. */
const widest = 0.3

function boxOfHole(length: number): ScaledProps['box'] {
  const height = length + 2 * behind
  const beside = Math.min(besideLine, (height * widest) / 2)
  return [-beside, -behind, 2 * beside, height]
}

/** Units shown about the middle of the green. */
const aboutGreen = 42

/** The hole as it is drawn, whole and about the green: rectangles to scale, told apart by their pattern and number. */
export function SketchDrawing({ hole, sketch, drawn, open }: Props) {
  const shapes = shapesDrawn(sketch, drawn)
  const green = greenDrawn(sketch, drawn)
  const what = sketchLines(sketch)
  const { length } = drawn
  const marks = { shapes, green, open }
  return (
    <div className="sketch">
      {length !== null && (
        <Scaled
          label={say('sketch-drawing', { hole, what })}
          box={boxOfHole(length)}
          className="sketch-hole"
          isNumbered={isFarFromGreen}
          {...marks}
        >
          <line className="sketch-line" x1={0} y1={length} x2={0} y2={0} />
          <rect className="sketch-tee" x={-6} y={length - 4} width={12} height={8} />
        </Scaled>
      )}
      <Scaled
        label={say(length === null ? 'sketch-drawing' : 'sketch-drawing-green', { hole, what })}
        box={[green.right - aboutGreen, -aboutGreen, 2 * aboutGreen, 2 * aboutGreen]}
        className="sketch-green"
        {...marks}
      >
        <Thirds green={green} />
      </Scaled>
    </div>
  )
}

interface ScaledProps {
  readonly label: string
  readonly box: readonly [x: number, y: number, width: number, height: number]
  readonly className: string
  readonly shapes: readonly ShapeDrawn[]
  readonly green: GreenSketch
  readonly open: ShapeId | null
  /** Whether a shape has its number here: beside the green there is room for it in the larger picture alone. */
  readonly isNumbered?: (shape: ShapeDrawn) => boolean
  readonly children: ReactNode
}

/** One picture in units of the hole; below is towards the tee. */
function Scaled({ label, box, className, shapes, green, open, isNumbered, children }: ScaledProps) {
  const id = useId()
  const [x, y, width, height] = box
  return (
    <svg
      role="img"
      aria-label={label}
      className={className}
      viewBox={box.join(' ')}
      preserveAspectRatio="xMidYMid meet"
    >
      <defs>
        {shapeKinds.map(kind => (
          <Pattern key={kind} id={`${id}-${kind}`} kind={kind} size={width / 26} />
        ))}
      </defs>
      <rect className="sketch-ground" x={x} y={y} width={width} height={height} />
      {inLayers(shapes).map(shape => (
        <Shape key={shape.id} shape={shape} fill={`url(#${id}-${shape.kind})`} isOpen={shape.id === open} />
      ))}
      <ellipse className="sketch-putting" cx={green.right} cy={0} rx={green.width / 2} ry={green.depth / 2} />
      {children}
      {shapes.filter(isNumbered ?? (() => true)).map(shape => (
        <ShapeNumber key={shape.id} shape={shape} box={box} />
      ))}
    </svg>
  )
}

const isFarFromGreen = ({ area: { left, right, short, long } }: ShapeDrawn): boolean =>
  short < -aboutGreen || long > aboutGreen || left < -aboutGreen || right > aboutGreen

/** A fairway lies under what is in it. */
const inLayers = (shapes: readonly ShapeDrawn[]): readonly ShapeDrawn[] =>
  shapes.toSorted((a, b) => Number(b.kind === 'fairway') - Number(a.kind === 'fairway'))

function Shape({
  shape,
  fill,
  isOpen,
}: {
  readonly shape: ShapeDrawn
  readonly fill: string
  readonly isOpen: boolean
}) {
  const { left, right, short, long } = shape.area
  return (
    <rect
      className={isOpen ? 'sketch-shape open' : 'sketch-shape'}
      fill={fill}
      x={left}
      y={-long}
      width={right - left}
      height={long - short}
    />
  )
}

/** In the middle of what is seen of a shape. */
function ShapeNumber({ shape, box }: { readonly shape: ShapeDrawn; readonly box: ScaledProps['box'] }) {
  const [x, y, width, height] = box
  const { left, right, short, long } = shape.area
  const [from, to] = [Math.max(left, x), Math.min(right, x + width)]
  const [top, bottom] = [Math.max(-long, y), Math.min(-short, y + height)]
  if (from >= to || top >= bottom) return null
  return (
    <text
      className="sketch-number"
      fontSize={Math.max(width / 13, height / 19)}
      strokeWidth={height / 90}
      x={(from + to) / 2}
      y={(top + bottom) / 2}
    >
      {shape.n}
    </text>
  )
}

function Thirds({ green: { width, depth, right } }: { readonly green: GreenSketch }) {
  // Half the width of an ellipse a sixth of its height off the middle is eight ninths of a root.
  const half = (width / 2) * Math.sqrt(8 / 9)
  return (
    <>
      <line className="sketch-third" x1={right - half} y1={-depth / 6} x2={right + half} y2={-depth / 6} />
      <line className="sketch-third" x1={right - half} y1={depth / 6} x2={right + half} y2={depth / 6} />
    </>
  )
}

interface PatternProps {
  readonly id: string
  readonly kind: ShapeKind
  /** Of one repeat, in units of the picture. */
  readonly size: number
}

/** Dots are sand, level lines water, slanted ones out of bounds, rings trees; a fairway is its outline. */
function Pattern({ id, kind, size }: PatternProps) {
  return (
    <pattern id={id} width={size} height={size} patternUnits="userSpaceOnUse">
      <rect className="sketch-ground" width={size} height={size} />
      <PatternMark kind={kind} size={size} />
    </pattern>
  )
}

function PatternMark({ kind, size }: Omit<PatternProps, 'id'>) {
  const thin = { strokeWidth: size / 7 }
  switch (kind) {
    case 'bunker':
      return <circle className="sketch-dot" cx={size / 2} cy={size / 2} r={size / 6} />
    case 'water':
      return <line className="sketch-mark" {...thin} x1={0} y1={size / 2} x2={size} y2={size / 2} />
    case 'out-of-bounds':
      return <path className="sketch-mark" {...thin} d={`M0 ${size}L${size} 0M0 0L${size} ${size}`} />
    case 'trees':
      return <circle className="sketch-mark" {...thin} cx={size / 2} cy={size / 2} r={size / 3.2} />
    case 'fairway':
      return null
  }
}

/** The pattern of a kind beside its words. */
export function Swatch({ kind }: { readonly kind: ShapeKind }) {
  const id = useId()
  return (
    <svg aria-hidden="true" className="sketch-swatch" viewBox="0 0 24 24">
      <defs>
        <Pattern id={id} kind={kind} size={6} />
      </defs>
      <rect className="sketch-shape" fill={`url(#${id})`} x={1} y={1} width={22} height={22} />
    </svg>
  )
}
