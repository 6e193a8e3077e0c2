import { say } from '../../words/say.ts'
import type { StrokesHere } from './strokes-here.ts'

/** Strokes received here, as slanted ticks, per game. */
export function Ticks({ strokes }: { readonly strokes: readonly StrokesHere[] }) {
  if (strokes.length === 0) return null
  return (
    <span className="ball-strokes">
      {strokes.map(({ words, strokes: count }) => (
        <span key={words}>
          {words}
          <Count count={count} />
        </span>
      ))}
    </span>
  )
}

/** So many ticks, or the words for none and for strokes given. */
export function Count({ count }: { readonly count: number }) {
  if (count < 0) return <>&nbsp;{say('gives-n', { n: -count })}</>
  if (count === 0) {
    return (
      <span className="ticks">
        <span aria-hidden="true">{say('no-strokes')}</span>
        <span className="hidden">{say('none-here')}</span>
      </span>
    )
  }
  const label = count === 1 ? say('one-stroke') : say('n-strokes', { n: count })
  return (
    <span className="ticks" role="img" aria-label={label}>
      {Array.from({ length: count }, (_, tick) => tick).map(tick => (
        <span key={tick} className="tick" />
      ))}
    </span>
  )
}
