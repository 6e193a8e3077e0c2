import { unreachable } from '#core/values/assert.ts'

export type UnfinishedSideRuling = 'loses-hole' | 'disqualified-unless-corrected'

/**
 * What happens to a four-ball side when neither partner finishes a hole. In a match it loses the hole, unless the other
 * side has lost or conceded it already.
 * Source: Rules of Golf, rule 23.2; R&A and USGA; 2019 and 2023.
 */
export function ruleOnUnfinishedSide(form: 'match' | 'stroke-play'): UnfinishedSideRuling {
  switch (form) {
    case 'match':
      return 'loses-hole'
    case 'stroke-play':
      return 'disqualified-unless-corrected'
    default:
      return unreachable(form)
  }
}
