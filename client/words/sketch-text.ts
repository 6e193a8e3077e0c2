import type { GreenSketch, HoleSketch, ShapeSketch } from '#core/outing/sketch.ts'
import { say } from './say-any.ts'

/** "Bunker left of the green". */
export const shapeName = ({ kind, by, side }: Pick<ShapeSketch, 'kind' | 'by' | 'side'>): string =>
  kind === 'fairway' && side === 'on'
    ? say('shape-fairway')
    : say('shape-name', { kind: say(`shape-${kind}`), place: placeText({ by, side }) })

export const placeText = ({ by, side }: Pick<ShapeSketch, 'by' | 'side'>): string => {
  if (by === 'green') return say(`place-green-${side as Extract<ShapeSketch, { by: 'green' }>['side']}`)
  return say(`place-line-${side as Extract<ShapeSketch, { by: 'line' }>['side']}`)
}

/** A shape with its figures, in its own unit. */
export function shapeLine(sketch: ShapeSketch): string {
  const { gap, width, length } = sketch
  const shape = shapeName(sketch)
  if (sketch.by === 'green') return say('shape-green-line', { shape, gap, width, length })
  const { from, distance, side } = sketch
  return say(`shape-${side === 'on' ? 'on' : 'line'}-${from}`, { shape, gap, width, distance, end: distance + length })
}

/** The whole sketch in sentences, for who cannot see the drawing. */
export const sketchLines = ({ green, shapes }: HoleSketch): string =>
  [...(green === null ? [] : [greenText(green)]), ...[...shapes.values()].map(shape => `${shapeLine(shape)}.`)].join(
    ' ',
  )

function greenText({ width, depth, right, unit }: GreenSketch): string {
  const fill = { width, depth, unit: say(`unit-${unit}`) }
  if (right === 0) return say('sketch-green-size', fill)
  return say('sketch-green-off', { ...fill, off: rightText(right) })
}

/** Where the middle of a green is, seen from the line of play: "4 left". */
export const rightText = (right: number): string =>
  right === 0
    ? say('sketch-right-none')
    : say(right < 0 ? 'sketch-right-left' : 'sketch-right-right', { n: Math.abs(right) })
