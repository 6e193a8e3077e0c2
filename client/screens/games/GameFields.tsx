import type { FormatName } from '#core/formats/format-names.ts'
import { needsHandicaps } from '#core/formats/game-gaps.ts'
import type { GameMethods as GameMethodValues } from '#core/formats/game-methods.ts'
import { formatTable, strokesGivenIn } from '#core/formats/table.ts'
import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { Heading } from '../../parts/Label.tsx'
import { Select } from '../../parts/Select.tsx'
import { say, type WordKey } from '../../words/say-any.ts'
import { GameMethods } from './GameMethods.tsx'
import { sidesOfDraft } from './game-acts.ts'
import { type GameDraft, recommendedPercent } from './game-draft.ts'
import { SharesField } from './SharesField.tsx'
import { SidesByHand } from './SidesByHand.tsx'
import {
  ballsNeeded,
  isEachAlone,
  isInOrder,
  mostListed,
  type Named,
  type Sides,
  sidesWords,
  textOfSides,
  waysToSide,
  wordsOfSides,
} from './sides.ts'

/** What the fields of one game work on. */
export interface GameFieldsProps {
  readonly format: FormatName
  readonly game: GameDraft
  readonly balls: readonly Named[]
  /** How many play one ball. */
  readonly ballPlayers: number
  readonly onChange: (changed: Partial<GameDraft>) => void
  /** The sentence for a field at fault, by the field's id. */
  readonly faultAt: (field: string) => string | undefined
}

/** Sides, allowance and methods of one game. */
export function GameFields(props: GameFieldsProps) {
  const { format, game, onChange, faultAt } = props
  const { allowance, settings } = formatTable[format]
  const name = say(format)
  return (
    <Heading value={name}>
      <SidesField {...props} />
      {settings.includes('handicapShares') && <SharesField {...props} />}
      {settings.includes('allowancePercent') && needsHandicaps(formatTable[format], game.methods) && (
        <Field
          label={say('game-allowance', { game: name })}
          inputMode="numeric"
          value={game.allowance}
          onValue={value => onChange({ allowance: value })}
          fault={faultAt(`${format}-allowance`)}
          hint={say('game-recommended', {
            percent: recommendedPercent(format, game.counting),
            source: allowance.source,
          })}
        />
      )}
      <p className="quiet">{say(strokesWord(format, game.methods))}</p>
      <GameMethods {...props} />
    </Heading>
  )
}

/** Where a game's strokes come from. */
export function strokesWord(format: FormatName, methods: GameMethodValues): WordKey {
  const row = formatTable[format]
  if (!needsHandicaps(row, methods)) return 'game-no-handicaps'
  return strokesGivenIn(format) === 'own' ? 'game-strokes-own' : 'game-strokes-difference'
}

/** Who plays whom, where there is a choice. */
function SidesField(props: GameFieldsProps) {
  const { format, game, balls, onChange, faultAt } = props
  const ways = waysToSide(format, balls)
  const fault = faultAt(format)
  if (ways.length === 0) {
    return <p className={fault ? 'fault' : 'quiet'}>{say('game-needs', { n: ballsNeeded(format) })}</p>
  }
  if (balls.length > mostListed && !isEachAlone(format)) return <SidesByHand {...props} />
  const stands = sidesOfDraft(format, game, balls)
  const isUsual = ways.some(way => textOfSides(format, way) === textOfSides(format, stands))
  if (!isUsual) {
    return <SideChoice format={format} balls={balls} stands={stands} ways={[stands, ...ways]} onChange={onChange} />
  }
  // A single way is said, unless each plays for themselves.
  const [only] = ways
  if (ways.length === 1) {
    return (only?.[0]?.length ?? 1) > 1 || only?.length === 2 ? <p>{sidesWords(balls, only ?? [])}</p> : null
  }
  return <SideChoice format={format} balls={balls} stands={stands} ways={ways} onChange={onChange} />
}

interface SideChoiceProps extends Pick<GameFieldsProps, 'format' | 'balls' | 'onChange'> {
  readonly stands: Sides
  readonly ways: readonly Sides[]
}

function SideChoice({ format, balls, stands, ways, onChange }: SideChoiceProps) {
  const options = ways.map(sides => ({
    value: textOfSides(format, sides),
    text: wordsOfSides(format, balls, sides),
  }))
  const shared = {
    label: say(isInOrder(format) ? 'game-partners-order' : 'game-sides', { game: say(format) }),
    value: textOfSides(format, stands),
    options,
    onValue: (value: string) =>
      onChange({ sidesChosen: ways.find(sides => textOfSides(format, sides) === value) ?? null }),
  }
  return options.length > mostInSight ? <Select {...shared} /> : <Choice {...shared} />
}

/** More ways than these are a list to open. */
const mostInSight = 6
