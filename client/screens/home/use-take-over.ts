import { useLocation } from 'wouter'
import { isCardText } from '#shared/card-file.ts'
import { takeCard } from '../../state/card-taking.ts'
import { takeOver } from '../../state/handing-over.ts'
import { say } from '../../words/say-any.ts'
import { tabPath } from '../paths.ts'
import { type Codes, useCodes } from './use-codes.ts'

/** Takes an outing from another phone by camera, pictures or file, until it is here. */
export function useTakeOver(label: string): Codes {
  const [, go] = useLocation()
  return useCodes(async text => {
    const isCard = isCardText(text)
    const taken = await (isCard ? takeCard(text, label) : takeOver(text, label))
    if (!taken.ok) return say(`take-over-${taken.error}`)
    go(tabPath(taken.value, isCard ? 'card' : 'hole'))
    return null
  })
}
