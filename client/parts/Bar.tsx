import type { Mark } from './mark.ts'
import { UnderBar } from './UnderBar.tsx'

/** Strokes above the line that are drawn at their height; more are cut on the slant and carry their number. */
const tallest = 4
const unit = 7

interface Props {
  readonly mark: Mark
  /** Left edge and width, in percent of the drawing around it. */
  readonly x: number
  readonly width: number
  /** The line's height from the top, px. */
  readonly base: number
}

/** One hole of the strip: shape says it first, colour second. */
export function Bar({ mark, x, width, base }: Props) {
  if (mark.kind === 'open') return null
  if (mark.kind === 'out') return <BrokenLine x={x} width={width} base={base} />
  if (mark.kind === 'picked-up') return <HatchedBar x={x} width={width} base={base} />
  if (mark.kind === 'two') {
    const part = width / mark.halves.length
    return mark.halves.map((half, place) => (
      <Bar key={JSON.stringify(half)} mark={half} x={x + place * part} width={part * 0.92} base={base} />
    ))
  }
  const { over } = mark
  if (over === 0) return <rect className="mark-solid" x={`${x}%`} width={`${width}%`} y={base - 1} height={2} />
  if (over < 0) return <UnderBar x={x} width={width} base={base} height={Math.min(-over, 3) * unit} />
  const height = Math.min(over, tallest) * unit
  return (
    <>
      <rect className="mark-solid" x={`${x}%`} width={`${width}%`} y={base - height} height={height + 0.5} />
      {over > tallest && <Cut over={over} x={x} width={width} base={base} />}
    </>
  )
}

/** The line broken, and a short upright rule in the gap. */
function BrokenLine({ x, width, base }: { x: number; width: number; base: number }) {
  const middle = `${x + width / 2}%`
  return (
    <>
      <rect className="mark-gap" x={`${x + width * 0.2}%`} width={`${width * 0.6}%`} y={base - 2} height={4} />
      <line className="mark-out" x1={middle} x2={middle} y1={base - 7} y2={base + 7} />
    </>
  )
}

function Cut({ over, x, width, base }: { over: number; x: number; width: number; base: number }) {
  return (
    <>
      <line className="mark-cut" x1={`${x}%`} x2={`${x + width}%`} y1={base - 6} y2={base - 11} />
      <text className="mark-number" x={`${x + width / 2}%`} y={base - 14}>
        {over}
      </text>
    </>
  )
}

const slants = Array.from({ length: 24 }, (_, place) => place * 4 - 14)

function HatchedBar({ x, width, base }: { x: number; width: number; base: number }) {
  const height = 2 * unit
  return (
    <svg x={`${x}%`} width={`${width}%`} y={base - height} height={height} overflow="hidden" aria-hidden="true">
      {slants.map(from => (
        <line key={from} className="mark-hatch" x1={from} y1={height} x2={from + height} y2={0} />
      ))}
      <rect className="mark-frame" x="0" y="0" width="100%" height="100%" />
    </svg>
  )
}
