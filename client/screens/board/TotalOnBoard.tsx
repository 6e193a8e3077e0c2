import type { TotalLine } from '#core/formats/game-result.ts'
import type { MeasureUnit } from '#core/formats/parts.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { Results } from '#core/outing/results.ts'
import { Strip } from '../../parts/Strip.tsx'
import { sideName } from '../../parts/side-name.ts'
import { stripOf, stripWords } from '../../parts/strip-view.ts'
import { overParWords, placeWords, progressWords, totalWords } from './board-view.ts'

interface Props {
  readonly outing: Outing
  readonly results: Results
  readonly lines: readonly TotalLine[]
  readonly unit: MeasureUnit
}

/** Lines in order of place: place, name, how far, strip, total. */
export function TotalOnBoard({ outing, results, lines, unit }: Props) {
  return (
    <ol>
      {lines.map(line => (
        <Line key={line.side.join()} outing={outing} results={results} line={line} unit={unit} />
      ))}
    </ol>
  )
}

function Line({ outing, results, line, unit }: Omit<Props, 'lines'> & { readonly line: TotalLine }) {
  const name = sideName(outing, line.side)
  const [ball] = line.side
  const level = ball && results.cards.get(ball)
  const over = overParWords(line)
  return (
    <li className="board-line">
      <span className="board-place">{placeWords(line)} </span>
      <div className="board-who">
        <p>
          <b>{name}</b> <span className="quiet">{progressWords(line)}</span>
        </p>
        {level && <Strip blocks={stripOf(outing, level, null)} label={stripWords(name, level)} hasSums={false} />}
      </div>
      <span className="board-total">
        {' '}
        {totalWords(line, unit)}
        {over && <small> {over}</small>}
      </span>
    </li>
  )
}
