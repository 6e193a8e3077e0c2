import type { MatchHoleResult, MatchLine } from '#core/formats/game-result.ts'

const base = 19
const height = 16

/** The match line between two sides: one side's holes above, the other's below, halved a short dash on the line. */
export function MatchStrip({ line, label }: { readonly line: MatchLine; readonly label: string }) {
  const blocks = Array.from({ length: Math.ceil(line.holes.length / 3) }, (_, place) =>
    line.holes.slice(place * 3, place * 3 + 3),
  )
  return (
    <div className="strip" role="img" aria-label={label}>
      {blocks.map((holes, place) => (
        <div key={holes[0]?.key ?? place} className="strip-block">
          <svg height={38} aria-hidden="true">
            <line className="mark-line" x1="0" x2="100%" y1={base} y2={base} />
            {holes.map(({ key, result }, at) => (
              <HoleOfMatch key={key} result={result} x={(at * 100) / 3 + 1} width={100 / 3 - 3} />
            ))}
          </svg>
        </div>
      ))}
    </div>
  )
}

function HoleOfMatch({ result, x, width }: { result: MatchHoleResult; x: number; width: number }) {
  if (result === null) return null
  if (typeof result === 'object') {
    const part = width / result.two.length
    return result.two.map((each, place) => (
      <HoleOfMatch key={each} result={each} x={x + place * part} width={part * 0.9} />
    ))
  }
  if (result === 0) {
    return <rect className="mark-solid" x={`${x + width * 0.3}%`} width={`${width * 0.4}%`} y={base - 2} height={4} />
  }
  const top = result === 1 ? base - height - 1 : base + 1
  return <rect className="mark-solid" x={`${x}%`} width={`${width}%`} y={top} height={height} />
}
