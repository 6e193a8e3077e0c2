import { formatIndex, parseIndexTenths } from '#core/outing/tenths.ts'
import { indexSaid } from '#core/plan/acts.ts'
import { fire } from '../../parts/fire.ts'
import { actOnPlan } from '../../state/player-log.ts'
import { say } from '../../words/say-any.ts'
import { TypedField } from './TypedField.tsx'

/** The most an Index can be, and the most below scratch that is taken, in tenths. */
const [most, least] = [540, -100]

/** The player's Handicap Index. */
export function IndexField({ tenths }: { readonly tenths: number | null }) {
  return (
    <TypedField
      label={say('figures-index')}
      hint={say('figures-index-hint')}
      text={tenths === null ? '' : formatIndex(tenths)}
      parse={parsed}
      onTyped={said => {
        if (said !== tenths) fire(actOnPlan('handicap index changed', () => indexSaid(said)))
      }}
      fault={say('figures-index-fault')}
      inputMode="decimal"
      maxLength={5}
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
