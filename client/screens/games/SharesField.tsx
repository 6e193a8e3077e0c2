import { formatTable } from '#core/formats/table.ts'
import { Field } from '../../parts/Field.tsx'
import { formatList } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import type { GameFieldsProps } from './GameFields.tsx'

/** What each partner of one ball brings to its handicap. */
export function SharesField({ format, game, ballPlayers, onChange, faultAt }: GameFieldsProps) {
  const { shares, source } = formatTable[format].allowance
  const recommended = shares?.find(({ length }) => length === ballPlayers) ?? []
  return (
    <Field
      label={say('game-shares', { game: say(format) })}
      value={game.shares[ballPlayers] ?? ''}
      onValue={text => onChange({ shares: { ...game.shares, [ballPlayers]: text } })}
      hint={say('game-shares-hint', { shares: formatList(recommended), source })}
      fault={faultAt(`${format}-shares`)}
    />
  )
}
