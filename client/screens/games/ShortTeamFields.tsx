import { shortTeamMethods } from '#core/formats/ghost.ts'
import type { BallId } from '#core/values/ids.ts'
import { thrownUp } from '../../device/random-ids.ts'
import { Select } from '../../parts/Select.tsx'
import { say } from '../../words/say-any.ts'
import type { GameFieldsProps } from './GameFields.tsx'
import { OneOf } from './OneOf.tsx'

type Props = Pick<GameFieldsProps, 'format' | 'game' | 'balls' | 'onChange'>

/** What a team one ball short has instead, and the card that is drawn for it. */
export function ShortTeamFields({ format, game, balls, onChange }: Props) {
  const { methods } = game
  const change = (changed: Partial<typeof methods>) => onChange({ methods: { ...methods, ...changed } })
  const draw = (): void => {
    const [drawn] = thrownUp(balls)
    if (drawn) change({ drawnCard: drawn.id as BallId })
  }
  return (
    <>
      <OneOf
        label={say('game-short-team', { game: say(format) })}
        value={methods.shortTeam ?? 'those-there'}
        values={shortTeamMethods}
        textOf={each => say(`short-team-${each}`)}
        onValue={shortTeam => change({ shortTeam })}
      />
      {methods.shortTeam === 'drawn-card' && (
        <>
          <p className="quiet">{say('drawn-card-hint')}</p>
          <Select
            label={say('game-drawn-card', { game: say(format) })}
            value={methods.drawnCard ?? ''}
            options={[
              { value: '', text: say('drawn-card-none') },
              ...balls.map(({ id, name }) => ({ value: id, text: name })),
            ]}
            onValue={id => change({ drawnCard: id === '' ? null : (id as BallId) })}
          />
          <button type="button" className="button" onClick={draw}>
            {say('drawn-card-draw')}
          </button>
        </>
      )}
    </>
  )
}
