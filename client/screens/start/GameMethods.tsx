import type { FormatName } from '#core/formats/format-names.ts'
import { formatTable } from '#core/formats/table.ts'
import { halfIndexMethods } from '#core/handicap/course-handicap.ts'
import { matchStrokesMethods } from '#core/handicap/match-strokes.ts'
import { allowanceRoundings } from '#core/handicap/playing-handicap.ts'
import { Select } from '../../parts/Select.tsx'
import { say } from '../../words/say.ts'
import type { GameDraft } from './draft.ts'

interface Props {
  readonly format: FormatName
  readonly game: GameDraft
  readonly onChange: (changed: Partial<GameDraft>) => void
}

/** The methods where bodies differ: each is right, and each game names its own. */
export function GameMethods({ format, game, onChange }: Props) {
  const name = say(format)
  return (
    <details>
      <summary>{say('start-details', { game: name })}</summary>
      <div className="group-box">
        <Select
          label={say('start-rounding', { game: name })}
          value={game.rounding}
          options={allowanceRoundings.map(value => ({ value, text: say(`start-rounding-${value}`) }))}
          onValue={value => onChange({ rounding: allowanceRoundings.find(each => each === value) ?? game.rounding })}
        />
        <Select
          label={say('start-half-index', { game: name })}
          value={game.nineHoleIndex}
          options={halfIndexMethods.map(value => ({ value, text: say(`start-half-index-${value}`) }))}
          onValue={value =>
            onChange({ nineHoleIndex: halfIndexMethods.find(each => each === value) ?? game.nineHoleIndex })
          }
        />
        {formatTable[format].settings.includes('matchStrokes') && (
          <Select
            label={say('start-match-strokes', { game: name })}
            value={game.matchStrokes}
            options={matchStrokesMethods.map(value => ({ value, text: say(`start-match-strokes-${value}`) }))}
            onValue={value =>
              onChange({ matchStrokes: matchStrokesMethods.find(each => each === value) ?? game.matchStrokes })
            }
          />
        )}
      </div>
    </details>
  )
}
