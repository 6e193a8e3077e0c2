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
  const { methods } = game
  const change = (changed: Partial<GameDraft['methods']>) => onChange({ methods: { ...methods, ...changed } })
  return (
    <details>
      <summary>{say('start-details', { game: name })}</summary>
      <div className="group-box">
        <Select
          label={say('start-rounding', { game: name })}
          value={methods.rounding ?? ''}
          options={allowanceRoundings.map(value => ({ value, text: say(`start-rounding-${value}`) }))}
          onValue={value => change({ rounding: allowanceRoundings.find(each => each === value) ?? methods.rounding })}
        />
        <Select
          label={say('start-half-index', { game: name })}
          value={methods.nineHoleIndex ?? ''}
          options={halfIndexMethods.map(value => ({ value, text: say(`start-half-index-${value}`) }))}
          onValue={value =>
            change({ nineHoleIndex: halfIndexMethods.find(each => each === value) ?? methods.nineHoleIndex })
          }
        />
        {formatTable[format].settings.includes('matchStrokes') && (
          <Select
            label={say('start-match-strokes', { game: name })}
            value={methods.matchStrokes ?? ''}
            options={matchStrokesMethods.map(value => ({ value, text: say(`start-match-strokes-${value}`) }))}
            onValue={value =>
              change({ matchStrokes: matchStrokesMethods.find(each => each === value) ?? methods.matchStrokes })
            }
          />
        )}
      </div>
    </details>
  )
}
