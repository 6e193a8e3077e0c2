import { useState } from 'react'
import { formatIndex, parseIndexTenths } from '#core/outing/tenths.ts'
import { indexSaid } from '#core/plan/acts.ts'
import { Field } from '../../parts/Field.tsx'
import { fire } from '../../parts/fire.ts'
import { actOnPlan } from '../../state/player-log.ts'
import { say } from '../../words/say-any.ts'

/** The most an Index can be, and the most below scratch that is taken, in tenths. */
const [most, least] = [540, -100]

/** The player's Handicap Index; it stands as soon as it is one. */
export function IndexField({ tenths }: { readonly tenths: number | null }) {
  const [typed, setTyped] = useState<string | null>(null)
  const [isInside, setInside] = useState(false)
  const isWrong = typed !== null && parsed(typed) === undefined
  return (
    <Field
      label={say('figures-index')}
      hint={say('figures-index-hint')}
      fault={isWrong && !isInside ? say('figures-index-fault') : undefined}
      inputMode="decimal"
      maxLength={5}
      value={typed ?? (tenths === null ? '' : formatIndex(tenths))}
      onFocus={() => setInside(true)}
      onBlur={() => {
        setInside(false)
        if (!isWrong) setTyped(null)
      }}
      onValue={text => {
        setTyped(text)
        const said = parsed(text)
        if (said !== undefined && said !== tenths) fire(actOnPlan('handicap index changed', () => indexSaid(said)))
      }}
    />
  )
}

/** Undefined where it is no Index; null for none. A comma stands for the point on many keypads. */
function parsed(text: string): number | null | undefined {
  const written = text.trim().replace(',', '.')
  if (written === '') return null
  const tenths = parseIndexTenths(written)
  return tenths !== null && tenths >= least && tenths <= most ? tenths : undefined
}
