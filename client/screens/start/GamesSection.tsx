import { type FormatName, formatNames } from '#core/formats/format-names.ts'
import { formatTable } from '#core/formats/table.ts'
import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { Tick } from '../../parts/Tick.tsx'
import { say } from '../../words/say.ts'
import type { GameDraft } from './draft.ts'
import { GameMethods } from './GameMethods.tsx'
import type { SectionProps } from './section.ts'
import { playersNeeded, sidesWords, waysToSide } from './sides.ts'

/** The games, any number at once, each with its allowance in sight. */
export function GamesSection({ draft, change, faultAt }: SectionProps) {
  const changeGame = (format: FormatName, changed: Partial<GameDraft>): void =>
    change({ games: { ...draft.games, [format]: { ...draft.games[format], ...changed } } })
  const none = faultAt('games')
  return (
    <section className="section" aria-label={say('start-games')}>
      <h2>{say('start-games')}</h2>
      {none && <p className="fault">{none}</p>}
      {formatNames.map(format => (
        <div key={format} className="group-box">
          <Tick label={say(format)} isOn={draft.games[format].isOn} onChange={isOn => changeGame(format, { isOn })} />
          {draft.games[format].isOn && (
            <GameSettings
              format={format}
              draft={draft}
              faultAt={faultAt}
              onChange={changed => changeGame(format, changed)}
            />
          )}
        </div>
      ))}
    </section>
  )
}

interface GameProps extends Pick<SectionProps, 'draft' | 'faultAt'> {
  readonly format: FormatName
  readonly onChange: (changed: Partial<GameDraft>) => void
}

function GameSettings({ format, draft, faultAt, onChange }: GameProps) {
  const game = draft.games[format]
  const { allowance, settings } = formatTable[format]
  return (
    <>
      <Sides format={format} draft={draft} faultAt={faultAt} onChange={onChange} />
      {settings.length === 0 ? (
        <p className="quiet">{say('start-no-handicaps')}</p>
      ) : (
        <>
          <Field
            label={say('start-game-allowance', { game: say(format) })}
            inputMode="numeric"
            value={game.allowance}
            onValue={value => onChange({ allowance: value })}
            fault={faultAt(`${format}-allowance`)}
            hint={say('start-recommended', { percent: allowance.percent, source: allowance.source })}
          />
          <GameMethods format={format} game={game} onChange={onChange} />
        </>
      )}
    </>
  )
}

/** Who plays whom, where there is a choice. */
function Sides({ format, draft, faultAt, onChange }: GameProps) {
  if (formatTable[format].sides.count.max === null) return null
  const ways = waysToSide(format, draft.players)
  const fault = faultAt(format)
  if (ways.length === 0) {
    return <p className={fault ? 'fault' : 'quiet'}>{say('start-game-players', { n: playersNeeded(format) })}</p>
  }
  const chosen = Math.min(draft.games[format].sides, ways.length - 1)
  return (
    <Choice
      label={say('start-game-sides', { game: say(format) })}
      value={String(chosen)}
      options={ways.map((sides, place) => ({ value: String(place), text: sidesWords(draft, sides) }))}
      onValue={value => onChange({ sides: Number(value) })}
    />
  )
}
