import type { GameSetting } from '#core/formats/game-methods.ts'
import { mixedTeesMethods, pressMethods } from '#core/formats/game-methods.ts'
import { skinsLeftMethods, skinsMethods } from '#core/formats/skins-methods.ts'
import { courseHandicapMethods, halfIndexMethods } from '#core/handicap/course-handicap.ts'
import { foursomesMatchMethods } from '#core/handicap/foursomes-match-strokes.ts'
import { matchStrokesMethods } from '#core/handicap/match-strokes.ts'
import { allowanceRoundings } from '#core/handicap/playing-handicap.ts'
import { defaultGameMethods } from '#core/outing/game-settings.ts'
import { Field } from '../../parts/Field.tsx'
import { say } from '../../words/say-any.ts'
import { settingsOf } from './format-settings.ts'
import type { GameFieldsProps } from './GameFields.tsx'
import { recommendedPercent } from './game-draft.ts'
import { MaximumFields } from './MaximumFields.tsx'
import { OneOf } from './OneOf.tsx'
import { ShortTeamFields } from './ShortTeamFields.tsx'
import { TieFields } from './TieFields.tsx'

/** Asked before the details. */
const inSight: ReadonlySet<GameSetting> = new Set(['allowancePercent', 'handicapShares'])

/** The methods where bodies and groups differ: each is right, and each game names its own. */
export function GameMethods(props: GameFieldsProps) {
  const { format } = props
  const settings = settingsOf(format).filter(setting => !inSight.has(setting))
  if (settings.length === 0) return null
  return (
    <details>
      <summary>{say('game-details', { game: say(format) })}</summary>
      <div className="group-box">
        {settings.map(setting => (
          <Method key={setting} setting={setting} {...props} />
        ))}
      </div>
    </details>
  )
}

interface MethodProps extends GameFieldsProps {
  readonly setting: GameSetting
}

function Method({ setting, ...props }: MethodProps) {
  const { format, game, onChange } = props
  const { methods } = game
  const name = { game: say(format) }
  const change = (changed: Partial<typeof methods>) => onChange({ methods: { ...methods, ...changed } })
  switch (setting) {
    case 'allowancePercent':
    case 'handicapShares':
      return null
    case 'rounding':
      return (
        <OneOf
          label={say('game-rounding', name)}
          value={methods.rounding}
          values={allowanceRoundings}
          textOf={each => say(`rounding-${each}`)}
          onValue={rounding => change({ rounding })}
        />
      )
    case 'courseHandicap':
      return (
        <OneOf
          label={say('game-course-handicap', name)}
          value={methods.courseHandicap ?? 'with-rating-minus-par'}
          values={courseHandicapMethods}
          textOf={each => say(`course-handicap-${each}`)}
          onValue={courseHandicap => change({ courseHandicap })}
        />
      )
    case 'nineHoleIndex':
      return (
        <OneOf
          label={say('game-half-index', name)}
          value={methods.nineHoleIndex}
          values={halfIndexMethods}
          textOf={each => say(`half-index-${each}`)}
          onValue={nineHoleIndex => change({ nineHoleIndex })}
        />
      )
    case 'matchStrokes':
      return (
        <OneOf
          label={say('game-match-strokes', name)}
          value={methods.matchStrokes}
          values={matchStrokesMethods}
          textOf={each => say(`match-strokes-${each}`)}
          onValue={matchStrokes => change({ matchStrokes })}
        />
      )
    case 'sideStrokes':
      return (
        <OneOf
          label={say('game-side-strokes', name)}
          value={methods.sideStrokes}
          values={foursomesMatchMethods}
          textOf={each => say(`side-strokes-${each}`)}
          onValue={sideStrokes => change({ sideStrokes })}
        />
      )
    case 'mixedTees':
      return (
        <OneOf
          label={say('game-mixed-tees', name)}
          value={methods.mixedTees}
          values={mixedTeesMethods}
          textOf={each => say(`mixed-tees-${each}`)}
          onValue={mixedTees => change({ mixedTees })}
        />
      )
    case 'skins':
      return (
        <OneOf
          label={say('game-skins', name)}
          value={methods.skins}
          values={skinsMethods}
          textOf={each => say(`skins-${each}`)}
          onValue={skins => change({ skins })}
        />
      )
    case 'skinsLeft':
      // Where nothing carries nothing is left.
      return methods.skins === 'no-carry-over' ? null : (
        <OneOf
          label={say('game-skins-left', name)}
          value={methods.skinsLeft ?? 'unclaimed'}
          values={skinsLeftMethods}
          textOf={each => say(`skins-left-${each}`)}
          onValue={skinsLeft => change({ skinsLeft })}
        />
      )
    case 'shortTeam':
      return <ShortTeamFields game={game} format={format} balls={props.balls} onChange={onChange} />
    case 'drawnCard':
      return null
    case 'presses':
      return (
        <OneOf
          label={say('game-presses', name)}
          value={methods.presses}
          values={pressMethods}
          textOf={each => say(`presses-${each}`)}
          onValue={presses => change({ presses })}
        />
      )
    case 'countingBalls':
      return <CountingField {...props} />
    case 'maximumScore':
      return <MaximumFields {...props} />
    case 'ties':
      return (
        <TieFields
          game={say(format)}
          proposed={defaultGameMethods(format).ties}
          ties={methods.ties}
          onTies={ties => change({ ties })}
        />
      )
  }
}

/** The recommended allowance goes with the number, unless somebody has typed another. */
function CountingField({ format, game, onChange, faultAt }: GameFieldsProps) {
  const change = (counting: string): void => {
    const isRecommended = game.allowance === String(recommendedPercent(format, game.counting))
    const allowance = isRecommended ? String(recommendedPercent(format, counting)) : game.allowance
    onChange({ counting, allowance })
  }
  return (
    <Field
      label={say('game-counting', { game: say(format) })}
      value={game.counting}
      onValue={change}
      hint={say('game-counting-hint')}
      fault={faultAt(`${format}-counting`)}
    />
  )
}
