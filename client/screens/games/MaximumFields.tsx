import type { MaximumScore } from '#core/formats/maximum-score.ts'
import { Field } from '../../parts/Field.tsx'
import { say } from '../../words/say-any.ts'
import type { GameFieldsProps } from './GameFields.tsx'
import { OneOf } from './OneOf.tsx'

const kinds = ['twice-par', 'net-double-bogey', 'fixed'] as const satisfies readonly MaximumScore['kind'][]

/** The cap of a hole in maximum score. */
export function MaximumFields({ format, game, onChange, faultAt }: GameFieldsProps) {
  const name = { game: say(format) }
  const { maximumScore } = game.methods
  const choose = (kind: MaximumScore['kind']): void => {
    const chosen: MaximumScore = kind === 'fixed' ? { kind, strokes: Number(game.maximum) } : { kind }
    onChange({ methods: { ...game.methods, maximumScore: chosen } })
  }
  return (
    <>
      <OneOf
        label={say('game-maximum', name)}
        value={maximumScore?.kind ?? null}
        values={kinds}
        textOf={kind => say(`maximum-${kind}`)}
        onValue={choose}
      />
      {maximumScore?.kind === 'fixed' && (
        <Field
          label={say('game-maximum-strokes', name)}
          inputMode="numeric"
          value={game.maximum}
          onValue={maximum => onChange({ maximum })}
          fault={faultAt(`${format}-maximum`)}
        />
      )}
    </>
  )
}
